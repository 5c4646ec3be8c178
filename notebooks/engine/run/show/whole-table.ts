import type { Host, ShownColumn, Units } from "../../types/index.ts";
import { readingRows } from "./reading.ts";
import { isList } from "./safe.ts";
import { frameRows, isTableText, withoutRow } from "./show.ts";
import { isRecords, showRecords } from "./table.ts";

/** A table with all its rows, as texts. */
export interface WholeTable {
  readonly columns: readonly ShownColumn[];
  readonly rows: readonly (readonly string[])[];
}

/** More rows than this are no table that anybody prints. */
const most = 1_000_000;

/** A value as a whole table; undefined where it is none. */
export function wholeTable(value: unknown, host: Host, units: Units): WholeTable | undefined {
  if (isTableText(value)) {
    const plain = (key: string) => ({ key, title: key, unit: "", align: "left" as const });
    return { columns: value.columns.map(plain), rows: value.rows };
  }
  const records = recordsIn(value, host, units);
  if (records === undefined) return undefined;
  const { columns, rows } = showRecords(records, host, units, { limit: most, without: withoutRow });
  return { columns, rows: rows.map((row) => row.map(({ text }) => text)) };
}

function recordsIn(value: unknown, host: Host, units: Units): readonly unknown[] | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  if (isList(value)) return value.length === 0 || isRecords(value, host, units) ? value : undefined;
  return readingRows(value) ?? frameRows(value);
}
