import { isList, isObject, property } from "./safe.ts";

/** Whether a value is a reading of a table: typed rows, with what is wrong with the others. */
export function isReading(value: unknown): value is object {
  return isObject(value) && property(value, "kind") === "reading";
}

/** The typed rows of a reading, as the library's readers give them; undefined for anything else. */
export function readingRows(value: unknown): readonly unknown[] | undefined {
  if (!isReading(value)) return undefined;
  const rows = property(value, "rows");
  return isList(rows) ? rows : undefined;
}
