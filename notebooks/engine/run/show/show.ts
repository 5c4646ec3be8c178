import type { Host, Shown, TableText, Units } from "../../types/index.ts";
import { cautionOf } from "./asides.ts";
import { showDrawing, showElement } from "./drawing.ts";
import { figureOf } from "./figure.ts";
import { asideKeys } from "./inline.ts";
import { briefly, limits } from "./limits.ts";
import { readingRows } from "./reading.ts";
import {
  capped,
  isA,
  isList,
  isObject,
  itemsOf,
  ownKeys,
  plainText,
  property,
  tried,
} from "./safe.ts";
import { isRecords, showRecords } from "./table.ts";
import { titleOf } from "./title.ts";

/**
 * A value as plain data that can be drawn: it never throws, whatever the value is, and is of
 * limited size (see `limits`).
 */
export function show(
  value: unknown,
  host: Host,
  units: Units,
  { brief = false }: ShowOptions = {},
): Shown {
  return shown(value, { host, units, depth: 0, above: [], size: brief ? briefly : limits });
}

export interface ShowOptions {
  /** Only the beginning, as for a step between that is seldom looked at. Default no. */
  readonly brief?: boolean;
}

interface Place {
  readonly host: Host;
  readonly units: Units;
  readonly depth: number;
  /** The objects this one lies within, so that one that holds itself ends. */
  readonly above: readonly object[];
  readonly size: { readonly [K in "rows" | "items" | "fields" | "depth"]: number };
}

/** The row of a table that a reading's row came from: it says where, not what. */
export const withoutRow: ReadonlySet<string> = new Set([...asideKeys, "row"]);

const notShown: Shown = { kind: "text", text: "a value that cannot be shown" };

function shown(value: unknown, place: Place): Shown {
  return tried(() => shownPart(value, place), notShown);
}

function shownPart(value: unknown, place: Place): Shown {
  if (value === undefined || value === null) return { kind: "nothing" };
  if (typeof value === "string") return { kind: "text", text: capped(value, limits.text) };
  const figure = figureOf(value, place.host, place.units);
  if (figure !== undefined) {
    const measure = tried(() => place.host.measure?.(value), undefined);
    return { kind: "figure", figure, ...(measure === undefined ? {} : { measure }) };
  }
  if (!isObject(value)) return { kind: "text", text: plainText(value) };
  if (place.above.includes(value)) return { kind: "text", text: "itself again" };
  if (place.depth >= place.size.depth) return { kind: "text", text: "…" };
  return shownObject(value, { ...place, depth: place.depth + 1, above: [...place.above, value] });
}

function shownObject(value: object, place: Place): Shown {
  const { host, units, size } = place;
  if (isList(value)) return shownList(value, place);
  const whole =
    showTableText(value) ?? showRowsFor(value) ?? showDrawing(value) ?? showElement(value);
  if (whole !== undefined) return whole;
  const rows = readingRows(value) ?? frameRows(value);
  if (rows !== undefined) {
    return showRecords(rows, host, units, { without: withoutRow, size: { rows: size.rows } });
  }
  if (isA(value, Map)) return shownFields([...value].slice(0, size.fields), place);
  if (isA(value, Set)) return shownList([...value], place);
  if (isA(value, Error)) return { kind: "text", text: capped(plainText(value), limits.text) };
  const fields = ownKeys(value, size.fields).filter((key) => !asideKeys.has(key));
  return shownFields(
    fields.map((key) => [key, property(value, key)]),
    place,
  );
}

function shownFields(pairs: readonly (readonly [unknown, unknown])[], place: Place): Shown {
  const fields = pairs
    .filter(([, part]) => part !== undefined && typeof part !== "function")
    .map(([key, part]) => ({ title: titleOf(plainText(key)), shown: shown(part, place) }))
    .filter(({ shown: part }) => part.kind !== "record" || part.fields.length > 0);
  return { kind: "record", fields };
}

function shownList(value: readonly unknown[], place: Place): Shown {
  const { host, units, size } = place;
  const items = itemsOf(value, size.rows);
  const cautions = items.map(cautionOf);
  if (items.length > 0 && cautions.every((caution) => caution !== undefined)) {
    return { kind: "cautions", cautions };
  }
  if (isRecords(items, host, units))
    return showRecords(value, host, units, { size: { rows: size.rows } });
  const first = items.slice(0, size.items);
  const count = tried(() => value.length, first.length);
  return {
    kind: "list",
    items: first.map((item) => shown(item, place)),
    more: count - first.length,
  };
}

/** The rows of a table of columns, as arquero makes them. */
export function frameRows(value: object): readonly unknown[] | undefined {
  if (typeof property(value, "objects") !== "function") return undefined;
  if (typeof property(value, "columnNames") !== "function") return undefined;
  const rows = tried(() => (value as { objects(): unknown }).objects(), undefined);
  return isList(rows) ? rows : undefined;
}

/** Rows offered to a table, of texts through and through. */
function showRowsFor(value: object): Shown | undefined {
  const [table, columns, rows] = ["table", "columns", "rows"].map((key) => property(value, key));
  if (property(value, "kind") !== "rows-for" || typeof table !== "string") return undefined;
  if (!isList(columns) || !isList(rows)) return undefined;
  const texts = (fields: readonly unknown[]) =>
    itemsOf(fields, limits.offeredColumns).map((field) => capped(plainText(field), limits.text));
  return {
    kind: "rows-for",
    table: capped(table, 300),
    columns: texts(columns),
    rows: itemsOf(rows, limits.offeredRows).map((row) => (isList(row) ? texts(row) : [])),
  };
}

function showTableText(value: object): Shown | undefined {
  if (!isTableText(value)) return undefined;
  const line = (fields: readonly unknown[]) =>
    itemsOf(fields, limits.tableTextColumns).map((field) => capped(plainText(field), limits.text));
  return {
    kind: "table-text",
    columns: line(value.columns),
    rows: itemsOf(value.rows, limits.tableTextRows).map((row) => (isList(row) ? line(row) : [])),
    decimal: value.decimal === "," ? "," : ".",
  };
}

export function isTableText(value: unknown): value is TableText {
  return (
    isObject(value) &&
    property(value, "kind") === "table" &&
    isList(property(value, "columns")) &&
    isList(property(value, "rows"))
  );
}
