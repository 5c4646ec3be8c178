import type { Host, ShownColumn, Units } from "../../types/index.ts";
import { limits } from "./limits.ts";
import { readingRows } from "./reading.ts";
import { isList, isObject, itemsOf, tried } from "./safe.ts";
import { frameRows, isTableText, withoutRow } from "./show.ts";
import { isRecords, type RecordsOptions, showRecords, type TableSize } from "./table.ts";

/** A table with all its rows, as texts. */
export interface WholeTable {
  readonly columns: readonly ShownColumn[];
  readonly rows: readonly (readonly string[])[];
  /** The mark before decimals in its numbers. */
  readonly decimal: "." | ",";
}

/** What has more rows is no table here: nothing is cut off in silence. */
const most: TableSize = { rows: 1_000_000, columns: 10_000, cellText: limits.text };

/** A value as a whole table; undefined where it is none. */
export function wholeTable(
  value: unknown,
  host: Host,
  units: Units,
  { blankColumns = false }: Pick<RecordsOptions, "blankColumns"> = {},
): WholeTable | undefined {
  if (isTableText(value)) {
    const plain = (key: string) => ({ key, title: key, unit: "", align: "left" as const });
    return { columns: value.columns.map(plain), rows: value.rows, decimal: value.decimal };
  }
  const records = recordsIn(value, host, units);
  if (records === undefined) return undefined;
  const options = { size: most, without: withoutRow, blankColumns };
  const { columns, rows } = showRecords(records, host, units, options);
  return { columns, rows: rows.map((row) => row.map(({ text }) => text)), decimal: "." };
}

function recordsIn(value: unknown, host: Host, units: Units): readonly unknown[] | undefined {
  if (!isObject(value)) return undefined;
  if (!isList(value)) return readingRows(value) ?? frameRows(value);
  const length = tried(() => value.length, 0);
  if (length === 0) return [];
  return length <= most.rows && isRecords(itemsOf(value, length), host, units) ? value : undefined;
}
