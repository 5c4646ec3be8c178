import type { CellId, Entered } from "../types/index.ts";
import { placeOf, type Scope } from "./place.ts";
import type { EnteredRecord, EnteredValue } from "./record-types.ts";
import { type ReadRecord, readRecord } from "./records.ts";
import type { Reading } from "./storage.ts";
import { notWrittenOver } from "./words.ts";

export const enteredKey = (place: string) => `entered:${place}`;

/** What is kept of the entries and tables of one place. */
export async function loadEntered(
  storage: Reading,
  place: string,
): Promise<ReadRecord<EnteredRecord>> {
  return readRecord("entered", await storage.get(enteredKey(place)));
}

/**
 * Everything kept for these files, as the closed room takes it, and what could not be used.
 *
 * @param scope whose entries they are; by default the reader's own garden's
 */
export async function loadAllEntered(
  storage: Reading,
  files: readonly string[],
  scope: Scope = { main: files[0] ?? "", apart: false },
): Promise<{ readonly entered: Entered; readonly troubles: readonly string[] }> {
  const entered: Record<CellId, EnteredValue> = {};
  const troubles: string[] = [];
  for (const file of files) {
    const place = placeOf(file, scope);
    const read = await loadEntered(storage, place);
    if (read.is === "newer" || read.is === "broken") troubles.push(notWrittenOver(place, read));
    if (read.is !== "record") continue;
    for (const [name, value] of Object.entries(read.record.cells))
      entered[`${file}#${name}`] = value;
  }
  return { entered, troubles };
}
