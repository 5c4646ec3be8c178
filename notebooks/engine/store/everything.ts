import { readKey } from "./keys.ts";
import type { Storage } from "./storage.ts";

/** What a file of everything begins with. */
export const everythingKind = "bedwright-all";
export const everythingVersion = 1;

/**
 * Everything kept in this browser as the text of one file: the reader's notebooks, what is entered,
 * plans and earlier states, just as they are stored, so that what this version can't read is in it
 * too.
 */
export async function exportAll(storage: Storage): Promise<string> {
  const keys = (await storage.keys()).filter((key) => readKey(key) !== undefined).toSorted();
  const records: [string, unknown][] = [];
  for (const key of keys) records.push([key, await storage.get(key)]);
  const everything = {
    kind: everythingKind,
    version: everythingVersion,
    records: Object.fromEntries(records),
  };
  return `${JSON.stringify(everything, undefined, 1)}\n`;
}
