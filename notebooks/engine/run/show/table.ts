import type { Figure, Host, Shown, ShownColumn, Units } from "../../types/index.ts";
import { isPrintable } from "./figure.ts";
import { asideKeys, inlineFigure } from "./inline.ts";
import { limits } from "./limits.ts";
import { isList, isObject, itemsOf, ownKeys, property, tried } from "./safe.ts";
import { titleOf } from "./title.ts";

type ShownTable = Extract<Shown, { kind: "table" }>;

/** Whether an array is a table: at least one item, and all of those looked at plain records. */
export function isRecords(items: readonly unknown[], host: Host, units: Units): boolean {
  return (
    items.length > 0 &&
    items.every((item) => isObject(item) && !isList(item) && !isPrintable(item, host, units))
  );
}

interface RecordsOptions {
  readonly without?: ReadonlySet<string>;
  readonly limit?: number;
}

/** An array of records as rows; the columns are all keys, in the order they first come up. */
export function showRecords(
  value: readonly unknown[],
  host: Host,
  units: Units,
  { without = asideKeys, limit = limits.rows }: RecordsOptions = {},
): ShownTable {
  const items = itemsOf(value, limit);
  const keys = columnKeys(items, without);
  const rows = items.map((item) =>
    keys.map((key) => inlineFigure(isObject(item) ? property(item, key) : undefined, host, units)),
  );
  const count = tried(() => value.length, items.length);
  return {
    kind: "table",
    columns: keys.map((key, index) => columnOf(key, rows, index)),
    rows,
    more: count - items.length,
  };
}

function columnKeys(items: readonly unknown[], without: ReadonlySet<string>): readonly string[] {
  const keys = new Set<string>();
  for (const item of items) {
    if (keys.size >= limits.columns) break;
    if (!isObject(item)) continue;
    for (const key of ownKeys(item, limits.columns)) if (!without.has(key)) keys.add(key);
  }
  return [...keys].slice(0, limits.columns);
}

function columnOf(key: string, rows: readonly (readonly Figure[])[], index: number): ShownColumn {
  const figures = rows.map((row) => row[index]).filter((figure) => figure && figure.text !== "");
  const units = new Set(figures.map((figure) => figure?.unit ?? ""));
  const [unit = ""] = units;
  // "no price" among sums leaves the column one of figures.
  const numeric = figures.filter((figure) => figure && isNumeric(figure)).length;
  return {
    key,
    title: titleOf(key),
    unit: units.size === 1 ? unit : "",
    align: numeric > 0 && 2 * numeric > figures.length ? "right" : "left",
  };
}

function isNumeric(figure: Figure): boolean {
  return figure.unit !== "" || /^[^\p{L}]*\d[^\p{L}]*$/u.test(figure.text);
}
