import type { CellId, CellState, OutlineCell, TableText } from "../types/index.ts";
import type { Book, EnteredValue } from "./book.ts";
import type { Driver } from "./driver.ts";
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
  enter(id: CellId, value: EnteredValue | undefined): void;
  say(words: string): void;
  /** Shows a cell that is drawn somewhere on the page, and gives it focus. */
  goTo(id: CellId): boolean;
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
