import type { TableText } from "../types/index.ts";
import type { PlacedProblem } from "./context.ts";
import { sameName } from "./paste.ts";

export type Rows = readonly (readonly string[])[];

const isBlank = (row: readonly string[]) => row.every((field) => field.trim() === "");

/** Rows without the empty ones at the end: those are there to be filled in and count for nothing. */
export function withoutBlankEnd(rows: Rows): Rows {
  let end = rows.length;
  while (end > 0 && isBlank(rows[end - 1] ?? [])) end -= 1;
  return rows.slice(0, end);
}

export function withField(rows: Rows, row: number, column: number, text: string): Rows {
  return rows.map((fields, index) =>
    index === row ? fields.map((field, place) => (place === column ? text : field)) : fields,
  );
}

export function withoutRow(rows: Rows, row: number): Rows {
  return rows.filter((_, index) => index !== row);
}

/** A heading in words: `soil_depth (in)` is "Soil depth (in)". */
export function headingWords(column: string): string {
  const words = column
    .replaceAll("_", " ")
    .replace(/([a-z])([A-Z])/g, (_, before, after: string) => `${before} ${after.toLowerCase()}`)
    .trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/**
 * Figures stand at the right: a column whose filled fields all begin with a digit. The first column
 * names its row, and a section such as 2x12 is a name too.
 */
export function isFigures(rows: Rows, column: number): boolean {
  const filled = rows.flatMap((row) => row[column]?.trim() || []);
  const figure = (text: string) =>
    /^[\p{Sc}−-]?\s?[\d.½¼¾]/u.test(text) && !/\d\s*[x×]\s*\d/i.test(text);
  return column > 0 && filled.length > 0 && filled.every(figure);
}

export interface Count {
  readonly counted: number;
  readonly filled: number;
  /** Why rows are left out: the row from 1, and what is wrong in a few words. */
  readonly left: readonly { readonly row: number; readonly why: string }[];
}

/** How many rows count, and why others don't. */
export function countRows(rows: Rows, problems: readonly PlacedProblem[]): Count {
  const filled = rows.filter((row) => !isBlank(row)).length;
  const reasons = new Map<number, string>();
  for (const { row, column, code } of problems)
    if (row !== undefined && row >= 1 && row <= rows.length && !reasons.has(row))
      reasons.set(row, `${column ? `${headingWords(column).toLowerCase()} ` : ""}${whyOf(code)}`);
  const left = [...reasons].sort(([a], [b]) => a - b).map(([row, why]) => ({ row, why }));
  return { counted: Math.max(0, filled - left.length), filled, left };
}

function whyOf(code: string): string {
  const words: Readonly<Record<string, string>> = {
    missing: "not filled in",
    unreadable: "not read",
    "wrong-unit": "without a fitting unit",
    "too-small": "too small",
    "too-large": "too large",
    unknown: "not known",
    duplicate: "given twice",
    "mixed-currency": "in another currency",
    unpriced: "without a price",
  };
  return words[code] ?? "not usable";
}

/** The place of a column that a problem names; -1 where the table has none. */
export function placeOf(columns: readonly string[], column: string | undefined): number {
  if (column === undefined) return -1;
  const exact = columns.indexOf(column);
  return exact >= 0 ? exact : columns.findIndex((one) => sameName(one, column));
}

/**
 * A table from a file in the order of the columns the document has; those it lacks are there to be
 * filled in, those it has beyond them follow.
 */
export function inKnownOrder(opened: TableText, known: readonly string[]): TableText {
  const places = known.map((name) => opened.columns.findIndex((one) => sameName(one, name)));
  const beyond = opened.columns.map((_, index) => index).filter((index) => !places.includes(index));
  const order = [...places, ...beyond];
  const columns = order.map((place, index) =>
    place >= 0 ? (opened.columns[place] ?? "") : (known[index] ?? ""),
  );
  const rows = opened.rows.map((row) =>
    order.map((place) => (place >= 0 ? (row[place] ?? "") : "")),
  );
  return { ...opened, columns, rows };
}
