import { type Path, type Problem, ProblemError, type Reading } from "../check/index.ts";

/** Where a field stands and how its numbers are written: the options of every reader of text. */
export interface CellPlace {
  readonly path: Path;
  readonly decimal: "." | ",";
  /** The unit in the heading, which bare numbers take. */
  readonly unit?: string;
}

/** Reads the text of one field. */
export type CellReader<T> = (text: string, place: CellPlace) => Reading<T>;

/** How one column of a table is read. */
export interface Column<T, Must extends boolean = boolean> {
  readonly must: Must;
  readonly read: CellReader<T>;
}

/**
 * A column that every row fills in.
 *
 * @param read reads one field, given its place, the decimal mark and the heading's unit
 * @throws ProblemError where it is no function (`missing` for nothing, else `unreadable`)
 * @rule a blank field is a problem
 * @source common practice
 * @example
 * requiredColumn(readLength).must // => true
 */
export function requiredColumn<T>(read: CellReader<T>): Column<T, true> {
  requireReader(read);
  return { must: true, read };
}

/**
 * A column that may be left out or left blank.
 *
 * @param read reads one field that is not blank
 * @throws ProblemError where it is no function (`missing` for nothing, else `unreadable`)
 * @rule a blank field is undefined
 * @source common practice
 * @example
 * optionalColumn(readLength).must // => false
 */
export function optionalColumn<T>(read: CellReader<T>): Column<T, false> {
  requireReader(read);
  return { must: false, read };
}

/** The columns of a table, by name in small letters. */
export type Columns = Readonly<Record<string, Column<unknown>>>;

/** A row as read: blank fields of optional columns are undefined. */
export type RowOf<C extends Columns> = {
  readonly [K in keyof C]: C[K] extends Column<infer T, infer Must>
    ? Must extends true
      ? T
      : T | undefined
    : never;
};

function requireReader(read: unknown): void {
  if (typeof read === "function") return;
  const problem: Problem = {
    code: read === undefined || read === null ? "missing" : "unreadable",
    path: ["read"],
    allowed: "a function that reads the text of a field",
    received: read === undefined || read === null ? "" : String(read),
    remedy: "Give a reader, as readLength.",
  };
  throw new ProblemError([problem]);
}
