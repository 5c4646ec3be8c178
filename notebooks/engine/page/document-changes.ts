import { documentsNeeded, readNotebook, writeNotebook } from "../document/index.ts";
import type { CellId, Entered, Notebook } from "../types/index.ts";
import { type Book, type EnteredValue, idOf } from "./book.ts";

/** Documents that an edit has made a notebook use, and what is entered in them. */
export interface LoadedMore {
  readonly documents: ReadonlyMap<string, Notebook>;
  readonly entered: Entered;
}

export interface DocumentChangesOptions {
  readonly book: Book;
  keepText(file: string, text: string, title: string): void;
  /** The documents these need and that are not open yet, and what is entered in them. */
  loadMore(documents: ReadonlyMap<string, Notebook>): Promise<LoadedMore>;
  /** The book has other documents now; the formulas or rows of these cells are others. */
  changed(cells: ReadonlySet<CellId>): void;
}

/** Gives the documents of an open notebook new texts. */
export class DocumentChanges {
  private readonly options: DocumentChangesOptions;

  constructor(options: DocumentChangesOptions) {
    this.options = options;
  }

  /** Takes the texts over and keeps them. */
  put(texts: ReadonlyMap<string, string>): void {
    this.take(texts);
    for (const file of texts.keys()) {
      const notebook = this.options.book.documents.get(file);
      if (notebook) this.options.keepText(file, writeNotebook(notebook), notebook.title);
    }
  }

  /** Takes texts over that are kept already. */
  take(texts: ReadonlyMap<string, string>): void {
    const documents = new Map(this.options.book.documents);
    for (const [file, text] of texts) documents.set(file, readNotebook(text, file));
    this.replace(documents);
    const needed = [...documents.values()].flatMap((one) => documentsNeeded(one));
    if (needed.some((file) => !documents.has(file))) void this.loadMore();
  }

  private replace(documents: ReadonlyMap<string, Notebook>): void {
    const { book, changed } = this.options;
    const before = contentsOf(book.documents);
    const after = contentsOf(documents);
    book.replace(documents);
    const ids = new Set([...before.keys(), ...after.keys()]);
    changed(new Set([...ids].filter((id) => before.get(id) !== after.get(id))));
  }

  /** A notebook that an edit has made this one use is fetched; until then it counts as missing. */
  private async loadMore(): Promise<void> {
    const { book, loadMore } = this.options;
    const more = await loadMore(book.documents);
    if (more.documents.size === 0) return;
    for (const [id, value] of Object.entries(more.entered) as [CellId, EnteredValue][])
      if (!book.entered.has(id)) book.entered.set(id, value);
    this.replace(new Map([...more.documents, ...book.documents]));
  }
}

/** The formula or the rows of each cell; cells that share a name are told apart by their place. */
function contentsOf(documents: ReadonlyMap<string, Notebook>): ReadonlyMap<CellId, string> {
  const contents = new Map<CellId, string>();
  for (const { file, blocks } of documents.values())
    for (const block of blocks) {
      if (block.kind !== "cell" && block.kind !== "table") continue;
      const id = idOf(file, block.name);
      const own = block.kind === "cell" ? block.formula : block.csv;
      contents.set(id, contents.has(id) ? `${contents.get(id)}\n${own}` : own);
    }
  return contents;
}
