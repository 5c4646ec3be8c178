import type { CellId } from "../types/index.ts";
import type { LiveCell } from "./cell.ts";
import { isReading, readingRows } from "./show/reading.ts";
import { isObject, property } from "./show/safe.ts";
import { wordsOf } from "./show/title.ts";

/** Rows of tables that could not be read and were left out: by table, how many of how many. */
export type LeftOut = ReadonlyMap<string, { readonly kept: number; readonly given: number }>;

/** What was left out of what each cell rests on, itself included. */
export function leftOutBy(cells: ReadonlyMap<CellId, LiveCell>): ReadonlyMap<CellId, LeftOut> {
  const found = new Map<CellId, LeftOut>();
  // Cells stand after all they take, so one pass is enough.
  for (const [id, live] of cells) {
    const parts = live.cell.takes.flatMap((taken) => [...(found.get(taken) ?? [])]);
    const own = live.status === "value" ? [live.value, ...live.readings] : [];
    parts.push(...own.flatMap(ownLeftOut));
    if (parts.length > 0) found.set(id, new Map(parts));
  }
  return found;
}

/** In words: "13 of 14 beds". */
export function leftOutOf(leftOut: LeftOut | undefined): string | undefined {
  if (leftOut === undefined) return undefined;
  return [...leftOut]
    .map(([table, { kept, given }]) => `${kept} of ${given} ${wordsOf(table)}`)
    .join(", ");
}

function ownLeftOut(value: unknown): [string, { kept: number; given: number }][] {
  const rows = readingRows(value);
  if (!isReading(value) || rows === undefined) return [];
  const [table, given] = ["table", "given"].map((key) => property(value, key));
  if (typeof table !== "string" || typeof given !== "number") return [];
  const kept = new Set(rows.map((row, index) => (isObject(row) ? property(row, "row") : index)));
  return kept.size < given ? [[table, { kept: kept.size, given }]] : [];
}
