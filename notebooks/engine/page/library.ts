import { documentsNeeded, loadDocuments } from "../document/index.ts";
import {
  type DocumentRecord,
  loadAllEntered,
  loadDocument,
  notWrittenOver,
  placeOf,
  type Scope,
  type Storage,
} from "../store/index.ts";
import type { Notebook } from "../types/index.ts";
import type { LoadedMore } from "./document-changes.ts";

/** What is needed to find notebooks: what is kept here, and the shipped ones. */
export interface Shelves {
  readonly storage: Storage;
  loadNotebook(file: string): Promise<string | undefined>;
}

/**
 * The notebooks one open notebook can reach: the reader's own are found before the shipped ones, and
 * those that a stranger's notebook brought along before either.
 */
export class Library {
  readonly scope: Scope;
  /** The reader's own among the documents, by file: these may be edited. */
  readonly own = new Map<string, DocumentRecord>();
  /** Documents that are kept and can't be used, in words for the reader. */
  readonly troubles: string[] = [];
  readonly #shelves: Shelves;

  private constructor(scope: Scope, shelves: Shelves) {
    this.scope = scope;
    this.#shelves = shelves;
  }

  static async of(main: string, shelves: Shelves): Promise<Library> {
    const record = await readDocument(main, shelves.storage);
    return new Library({ main, apart: record !== undefined && staysApart(record) }, shelves);
  }

  /** The text of a notebook; undefined where there is none of that name. */
  async load(file: string): Promise<string | undefined> {
    const place = this.place(file);
    const read = await loadDocument(this.#shelves.storage, place);
    if (read.is === "record") {
      this.own.set(file, read.record);
      return read.record.text;
    }
    if (read.is !== "absent") this.troubles.push(notWrittenOver(place, read));
    return this.#shelves.loadNotebook(file);
  }

  /** Where a document and what is entered in it are kept. */
  place(file: string): string {
    return placeOf(file, this.scope);
  }

  /** What is entered in these documents, and what of it can't be used. */
  loadEntered(files: readonly string[]) {
    return loadAllEntered(this.#shelves.storage, files, this.scope);
  }

  /** The documents that these use and that are not among them. */
  async loadMore(documents: ReadonlyMap<string, Notebook>): Promise<LoadedMore> {
    const needed = [...documents.values()]
      .flatMap((notebook) => documentsNeeded(notebook))
      .filter((file) => !documents.has(file));
    const all = await Promise.all(
      [...new Set(needed)].map((main) => loadDocuments(main, (file) => this.load(file))),
    );
    const more = new Map(
      all.flatMap((found) => [...found]).filter(([file]) => !documents.has(file)),
    );
    const { entered } = await this.loadEntered([...more.keys()]);
    return { documents: more, entered };
  }
}

/** A stranger's notebook keeps to what it brought along until the reader lets it have their garden. */
export function staysApart({ origin, ownGarden }: DocumentRecord): boolean {
  return (origin.from === "file" || origin.from === "link") && !ownGarden;
}

async function readDocument(place: string, storage: Storage): Promise<DocumentRecord | undefined> {
  const read = await loadDocument(storage, place);
  return read.is === "record" ? read.record : undefined;
}
