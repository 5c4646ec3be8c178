import type { Host, TableText, Units } from "../../types/index.ts";
import { numberText } from "./figure.ts";
import { readingRows } from "./reading.ts";
import { isA, isList, isObject, itemsOf, ownKeys, plainText, property, tried } from "./safe.ts";
import { frameRows, isTableText } from "./show.ts";

/** What lies deeper, or comes after so many, is marked as left off. */
const deepest = 12;
const longest = 1_000_000;

/**
 * A value as `--json` prints it: what the library knows in its own form, tables as arrays of row
 * objects, drawings without their trees, and never a throw.
 */
export function jsonOf(value: unknown, host: Host, units: Units): unknown {
  return json(value, { host, units, above: [] }) ?? null;
}

interface Place {
  readonly host: Host;
  readonly units: Units;
  readonly above: readonly object[];
}

function json(value: unknown, place: Place): unknown {
  return tried(() => jsonPart(value, place), null);
}

function jsonPart(value: unknown, place: Place): unknown {
  if (value === undefined || value === null) return null;
  if (typeof value === "boolean" || typeof value === "string") return value;
  // JSON has no word for what is no number; null would say that nothing is there.
  if (typeof value === "number") return Number.isFinite(value) ? value : numberText(value);
  if (!isObject(value)) return plainText(value);
  const known = tried(() => place.host.toJson(value, place.units), undefined);
  if (known !== undefined) return known;
  if (place.above.includes(value)) return "itself again";
  if (place.above.length >= deepest) return "…";
  return jsonObject(value, { ...place, above: [...place.above, value] });
}

function jsonObject(value: object, place: Place): unknown {
  const list = (items: readonly unknown[]) => listOf(items, place);
  if (isList(value)) return list(value as readonly unknown[]);
  if (isTableText(value)) return textRows(value);
  if (isA(value, Date)) return tried(() => value.toISOString(), null);
  if (isA(value, Error)) return plainText(value);
  if (isA(value, Set)) return list([...value]);
  if (isA(value, Map)) return fields([...value], place);
  if (property(value, "kind") === "rows-for" && isTextTable(value)) return textRows(value);
  const rows = readingRows(value) ?? frameRows(value);
  if (rows !== undefined) return list(rows);
  if (property(value, "nodeType") === 1) return "a drawing";
  const drawing = property(value, "kind") === "drawing";
  const keys = ownKeys(value, longest).filter((key) => !(drawing && key === "forms"));
  return fields(
    keys.map((key) => [key, property(value, key)]),
    place,
  );
}

function listOf(items: readonly unknown[], place: Place): unknown {
  const taken = itemsOf(items, longest).map((item) => json(item, place));
  const more = tried(() => items.length, 0) - taken.length;
  return more > 0 ? [...taken, `… and ${more} more`] : taken;
}

function fields(pairs: readonly (readonly [unknown, unknown])[], place: Place): unknown {
  const kept = pairs
    .filter(([, part]) => part !== undefined && typeof part !== "function")
    .map(([key, part]) => [plainText(key), json(part, place)] as const);
  return Object.fromEntries(kept);
}

type TextTable = Pick<TableText, "columns" | "rows">;

function isTextTable(value: object): value is TextTable {
  return isList(property(value, "columns")) && isList(property(value, "rows"));
}

/** The rows of a table's text as objects keyed by the columns. */
function textRows(table: TextTable): unknown {
  return itemsOf(table.rows, longest).map((row) =>
    Object.fromEntries(
      table.columns.map((column, index) => [
        plainText(column),
        isList(row) ? plainText(row[index] ?? "") : "",
      ]),
    ),
  );
}
