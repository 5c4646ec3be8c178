import type { CellId } from "../types/index.ts";
import { enteredKey } from "./loading.ts";
import { fileOfCell, nameOfCell } from "./place.ts";
import type { EnteredRecord, EnteredValue } from "./record-types.ts";
import { readRecord } from "./records.ts";
import type { Step } from "./storage.ts";
import { notWrittenOver } from "./words.ts";

/** Entries by place and name; undefined is a default again. */
export type Changes = ReadonlyMap<CellId, EnteredValue | undefined>;

export interface WrittenEntries {
  /** Why the place was left as it is, where it was. */
  readonly left?: string;
  /** What was there before, of the cells that were written. */
  readonly before: ReadonlyMap<CellId, EnteredValue | undefined>;
}

/** The changes by the place they belong to. */
export function byPlace(changes: Changes): ReadonlyMap<string, Changes> {
  const places = new Map<string, Map<CellId, EnteredValue | undefined>>();
  for (const [id, value] of changes) {
    const place = fileOfCell(id);
    const own = places.get(place) ?? new Map();
    places.set(place, own.set(id, value));
  }
  return places;
}

/**
 * Writes the changes of one place into what is there, cell by cell: other cells are left alone. A
 * record of a newer version, or one that can't be read, is never written over.
 */
export async function writeEntries(
  step: Step,
  place: string,
  changes: Changes,
): Promise<WrittenEntries> {
  const read = readRecord("entered", await step.get(enteredKey(place)));
  if (read.is === "newer" || read.is === "broken")
    return { left: notWrittenOver(place, read), before: new Map() };
  const cells = new Map(Object.entries(read.is === "record" ? read.record.cells : {}));
  const before = new Map([...changes.keys()].map((id) => [id, cells.get(nameOfCell(id))] as const));
  for (const [id, value] of changes) {
    if (value === undefined) cells.delete(nameOfCell(id));
    else cells.set(nameOfCell(id), value);
  }
  const record: EnteredRecord = {
    kind: "entered",
    version: 1,
    file: place,
    cells: Object.fromEntries(cells),
  };
  await step.put(enteredKey(place), record);
  return { before };
}

/** Whether an entry or a table holds the same. */
export function sameValue(a: EnteredValue | undefined, b: EnteredValue | undefined): boolean {
  if (typeof a !== "object" || typeof b !== "object") return a === b;
  return JSON.stringify([a.columns, a.rows]) === JSON.stringify([b.columns, b.rows]);
}
