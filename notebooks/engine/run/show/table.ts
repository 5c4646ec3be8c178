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

export interface RecordsOptions {
  readonly without?: ReadonlySet<string>;
  /** How many rows and columns, and how much text in a field. Default: what a page draws. */
  readonly size?: Partial<TableSize>;
  /** Keep columns in which nothing is said, for programs that count on them. Default no. */
  readonly blankColumns?: boolean;
}

export type TableSize = { readonly [K in "rows" | "columns" | "cellText"]: number };

/** An array of records as rows; the columns are all keys, in the order they first come up. */
export function showRecords(
  value: readonly unknown[],
  host: Host,
  units: Units,
  { without = asideKeys, size = {}, blankColumns = false }: RecordsOptions = {},
): ShownTable {
  const most = { ...limits, ...size };
  const items = itemsOf(value, most.rows);
  const partOf = (item: unknown, key: string) => (isObject(item) ? property(item, key) : undefined);
  const all = columnKeys(items, without, most.columns).map((key) => {
    const values = items.map((item) => partOf(item, key));
    const figures = values.map((part) => inlineFigure(part, host, units, most.cellText));
    return { key, values, figures };
  });
  // A column in which nothing is said takes room from those that say something.
  const columns = all.filter(
    ({ figures }) => blankColumns || figures.some(({ text }) => text !== ""),
  );
  const count = tried(() => value.length, items.length);
  return {
    kind: "table",
    columns: columns.map(columnOf),
    rows: items.map((_, at) => columns.flatMap(({ figures }) => figures[at] ?? [])),
    more: count - items.length,
  };
}

function columnKeys(
  items: readonly unknown[],
  without: ReadonlySet<string>,
  most: number,
): readonly string[] {
  const keys = new Set<string>();
  for (const item of items) {
    if (keys.size >= most) break;
    if (!isObject(item)) continue;
    for (const key of ownKeys(item, most)) if (!without.has(key)) keys.add(key);
  }
  return [...keys].slice(0, most);
}

interface Column {
  readonly key: string;
  readonly values: readonly unknown[];
  readonly figures: readonly Figure[];
}

function columnOf({ key, values, figures }: Column): ShownColumn {
  const filled = figures.filter(({ text }) => text !== "");
  const units = new Set(filled.map((figure) => figure.unit));
  const [unit = ""] = units;
  // Names stand at the left though they be digits; "no price" among sums leaves a column of figures.
  const numeric = figures.filter(
    (figure, at) => typeof values[at] !== "string" && isNumeric(figure),
  );
  return {
    key,
    title: titleOf(key),
    unit: units.size === 1 ? unit : "",
    align: numeric.length > 0 && 2 * numeric.length > filled.length ? "right" : "left",
  };
}

function isNumeric(figure: Figure): boolean {
  return figure.unit !== "" || /^[^\p{L}]*\d[^\p{L}]*$/u.test(figure.text);
}
