import type { Block, CellId, CellState, OutlineCell, TableText } from "../types/index.ts";
import type { Book, EnteredValue } from "./book.ts";
import type { Driver, EditOptions } from "./driver.ts";
import type { PageOptions } from "./options.ts";
import type { Sources } from "./sources.ts";

/** What every part of an open notebook's page is given. */
export interface Context {
  readonly book: Book;
  readonly driver: Driver;
  readonly sources: Sources;
  readonly csv: Csv;
  /** ISO date. */
  readonly today: string;
  /** The problems that any cell reports about a table or an entry. */
  readonly problems: ProblemPlaces;
  /** All that the page was handed. */
  readonly options: PageOptions;
  readonly editing: Editing;
  /** Calls back whenever what the open notebook holds may have changed; gives what ends it. */
  watch(changed: () => void): () => void;
  enter(id: CellId, value: EnteredValue | undefined): void;
  /** Enters many as one change that can be undone. */
  enterAll(values: ReadonlyMap<CellId, EnteredValue | undefined>): void;
  undo(): void;
  redo(): void;
  /** Makes an own notebook of the one shown, and opens that. */
  makeItMine(): void;
  /** Saves the notebook, with what it uses and what is entered, as one file. */
  saveAsFile(): void;
  say(words: string): void;
  /** Shows a cell that is drawn somewhere on the page, and gives it focus. */
  goTo(id: CellId): boolean;
}

/** Changing documents: entries and documents share one history. */
export interface Editing {
  /** Only the reader's own notebooks may be edited; a shipped one is made theirs first. */
  mayEdit(file: string): boolean;
  /** Gives documents new texts, as one change that can be undone. */
  edit(texts: ReadonlyMap<string, string>, options?: EditOptions): void;
  /** What stands after a block of the main document in the writing view; set by the editor. */
  blockTools?(index: number, block: Block): HTMLElement | undefined;
}

export interface Csv {
  readCsv(text: string, name: string): TableText;
  writeCsv(table: TableText): string;
}

/** Which problems are about which entry or table. */
export interface ProblemPlaces {
  of(id: CellId): readonly PlacedProblem[];
}

export interface PlacedProblem {
  readonly sentence: string;
  readonly code: string;
  readonly row: number | undefined;
  readonly column: string | undefined;
}

/** A part of the page that stands for one cell. */
export interface CellView {
  readonly element: HTMLElement;
  /** Shows the cell as it is now. */
  update(state: CellState | undefined, outline: OutlineCell | undefined): void;
}
