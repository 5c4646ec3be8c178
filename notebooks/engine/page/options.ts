import type { Journal, OtherTabs, Storage } from "../store/index.ts";
import type { Reference } from "../types/index.ts";
import type { Csv } from "./context.ts";
import type { RoomCode } from "./room-link.ts";
import type { ShelfNotebook } from "./shelf.ts";
import type { Sources } from "./sources.ts";

/** All that the page is handed: it imports no library and no data of its own. */
export interface PageOptions {
  /** What the page is drawn in; emptied first. */
  readonly root: HTMLElement;
  /** The shipped notebooks, in the shelf's order. */
  readonly notebooks: readonly ShelfNotebook[];
  /** A notebook's text by file name; undefined where there is none. */
  loadNotebook(file: string): Promise<string | undefined>;
  /** Where `engine.html` is; with `sealed` in its query its answer is sandboxed by its own header. */
  readonly engineUrl: string;
  readonly code: RoomCode;
  readonly csv: Csv;
  /** Titles of sources by id. */
  readonly sources: Sources;
  /** What there is to say of every name handed to cells; fetched when somebody first asks. */
  loadReference(): Promise<Reference>;
  readonly storage: Storage;
  /** Why nothing can be kept here, in words, where that is so. */
  readonly storageTrouble?: string;
  /** Holds what is typed until the storage has it. */
  readonly journal?: Journal;
  /** The other open pages of this workbook. */
  readonly others?: OtherTabs;
  /** ISO date. */
  readonly today: string;
}
