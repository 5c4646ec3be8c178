import { writeNotebook } from "../document/index.ts";
import type { Book } from "./book.ts";
import type { Library } from "./library.ts";

/** What an earlier state holds: the texts of the reader's own documents, and all that is entered. */
export function stateOf(book: Book, { own, scope }: Library) {
  const texts = [...own.keys()].flatMap((file) => {
    const notebook = book.documents.get(file);
    return notebook ? [[file, writeNotebook(notebook)] as const] : [];
  });
  return {
    ...scope,
    files: [...book.documents.keys()],
    texts: Object.fromEntries(texts),
    entered: Object.fromEntries(book.entered),
  };
}
