import {
  type CalendarDate,
  isCalendarDate,
  isoDate,
  isQuantity,
  ProblemError,
  printQuantity,
  requireRecord,
  requireText,
} from "../../lib/index.ts";

/** What may stand in a field of an offered row. */
export type OfferedField = string | number | boolean | object | null | undefined;

/** Rows that a reader may add to a table of theirs. */
export interface RowsFor {
  readonly kind: "rows-for";
  /** The table, as formulas name it. */
  readonly table: string;
  readonly columns: readonly string[];
  /** As people type them. */
  readonly rows: readonly (readonly string[])[];
}

/**
 * Rows offered to a table: the page shows them with a button that adds them to it, which only the
 * reader can press and undo. A formula itself never changes what is entered.
 *
 * @param table name of a table of this notebook, or of one it uses
 * @param rows records whose fields are columns of that table; lengths and other quantities, numbers,
 * yes or no, dates, sections and texts are written as people type them
 * @returns a record that the page draws
 * @throws ProblemError where `table` is no text, `rows` no list of records, or a field is of another kind
 *
 * @example
 * rowsFor("onHand", [{ section: "2x12", length: times(7, foot), count: 2 }]).rows // => [["2x12","7 ft","2"]]
 */
export function rowsFor(
  table: string,
  rows: readonly Readonly<Record<string, OfferedField>>[],
): RowsFor {
  requireText(table, ["table"]);
  if (!Array.isArray(rows)) {
    throw refused(["rows"], "a list of records", typeof rows, 'Give a list, as [{ bed: "A" }].');
  }
  rows.forEach((row, at) => {
    requireRecord(row, ["rows", at + 1]);
  });
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return {
    kind: "rows-for",
    table,
    columns,
    rows: rows.map((row, at) => columns.map((column) => typed(row[column], at + 1, column))),
  };
}

/** A value as people type it. */
function typed(value: OfferedField, row: number, column: string): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "string") return value;
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "number" && Number.isFinite(value)) return String(value);
  if (isQuantity(value)) return printQuantity(value);
  if (typeof value === "object") {
    if (isCalendarDate(value)) return isoDate(value as CalendarDate);
    if ("name" in value && typeof value.name === "string") return value.name;
  }
  throw refused(
    ["rows", row, column],
    "a quantity, a finite number, yes or no, a date, a section or a text",
    String(value),
    "Write the field out as it would be typed.",
  );
}

function refused(
  path: readonly (string | number)[],
  allowed: string,
  received: string,
  remedy: string,
): ProblemError {
  return new ProblemError([{ code: "unreadable", path, allowed, received, remedy }]);
}
