import type { TableText } from "../types/index.ts";
import { sameName } from "./paste.ts";
import { withoutBlankEnd } from "./table-rows.ts";

/** Rows that are offered to a table, in columns of their own order. */
export type OfferedRows = Pick<TableText, "columns" | "rows">;

/**
 * The offered rows that a table does not hold yet. Of rows alike as many are missing as the table
 * has fewer: two boards of one length are two rows.
 */
export function missingRows(table: TableText, offered: OfferedRows): OfferedRows {
  const places = offered.columns.map((name) => placeIn(table.columns, name));
  const there = new Map<string, number>();
  for (const row of table.rows) {
    const key = keyOf(places.map((place) => row[place] ?? ""));
    there.set(key, (there.get(key) ?? 0) + 1);
  }
  const rows = offered.rows.filter((row) => {
    const key = keyOf(offered.columns.map((_, at) => row[at] ?? ""));
    const left = there.get(key) ?? 0;
    if (left > 0) there.set(key, left - 1);
    return left === 0;
  });
  return { columns: offered.columns, rows };
}

/** The table with rows at its end; columns it lacks come after its own. */
export function withRows(table: TableText, { columns, rows }: OfferedRows): TableText {
  const beyond = columns.filter((name) => placeIn(table.columns, name) < 0);
  const all = [...table.columns, ...beyond];
  const places = all.map((name) => placeIn(columns, name));
  const padded = withoutBlankEnd(table.rows).map((row) => all.map((_, at) => row[at] ?? ""));
  const added = rows.map((row) => places.map((place) => (place < 0 ? "" : (row[place] ?? ""))));
  return { ...table, columns: all, rows: [...padded, ...added] };
}

function placeIn(columns: readonly string[], name: string): number {
  const exact = columns.indexOf(name);
  return exact >= 0 ? exact : columns.findIndex((one) => sameName(one, name));
}

const keyOf = (fields: readonly string[]) => JSON.stringify(fields.map((field) => field.trim()));
