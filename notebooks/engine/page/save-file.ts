import { pack } from "../document/index.ts";
import type { Context } from "./context.ts";
import { el } from "./dom.ts";

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

/** Lets the browser save a text under a name. Only ever called because the reader asked for it. */
export function saveText(text: string, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = el("a", { href: address, download: name, hidden: true });
  document.body.append(link);
  link.click();
  link.remove();
  // The browser takes hold of it when it begins to save, which is a moment later.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
