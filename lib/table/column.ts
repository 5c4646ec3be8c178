import type { Path, Reading } from "../check/index.ts";

/** Where a field stands and how its numbers are written: the options of every reader of text. */
export interface CellPlace {
  readonly path: Path;
  readonly decimal: "." | ",";
  /** The unit in the heading, which bare numbers take. */
  readonly unit?: string;
}

export type CellReader<T> = (text: string, place: CellPlace) => Reading<T>;

/** How one column of a table is read. */
export interface Column<T, Must extends boolean = boolean> {
  readonly must: Must;
  readonly read: CellReader<T>;
}

/** A column that every row fills in. */
export function requiredColumn<T>(read: CellReader<T>): Column<T, true> {
  return { must: true, read };
}

/** A column that may be left out or left blank. */
export function optionalColumn<T>(read: CellReader<T>): Column<T, false> {
  return { must: false, read };
}

export type Columns = Readonly<Record<string, Column<unknown>>>;

/** A row as read: blank fields of optional columns are undefined. */
export type RowOf<C extends Columns> = {
  readonly [K in keyof C]: C[K] extends Column<infer T, infer Must>
    ? Must extends true
      ? T
      : T | undefined
    : never;
};
