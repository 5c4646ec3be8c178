import type { Problem, Remark } from "../check/index.ts";

/**
 * What reading a table gives: the rows that could be read, how many were given, and what was wrong
 * with the others. Every row says which row of the table it came from, counted from 1 without the
 * heading.
 */
export interface TableReading<Row> {
  readonly kind: "reading";
  readonly table: string;
  readonly rows: readonly (Row & { readonly row: number })[];
  /** How many rows were written, blank ones apart: "13 of 14". */
  readonly given: number;
  readonly problems: readonly Problem[];
  readonly remarks: readonly Remark[];
}
