import { pack } from "../document/seldom.ts";
import type { Context } from "./context.ts";
import { saveText } from "./save-text.ts";

/** Saves the notebook as one CommonMark file, with what it uses and what is entered inside it. */
export function saveAsFile({ book, csv, say }: Context): void {
  const text = pack({
    main: book.main.file,
    documents: book.documents,
    entered: Object.fromEntries(book.entered),
    writeCsv: csv.writeCsv,
  });
  saveText(text, book.main.file.split("/").at(-1) ?? book.main.file, "text/markdown");
  say(`Saved as ${book.main.file}.`);
}
