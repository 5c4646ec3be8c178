import { loadDocument } from "./documents.ts";
import { readKey } from "./keys.ts";
import { loadAllEntered } from "./loading.ts";
import { partsOfPlace, placeOf, type Scope } from "./place.ts";
import type { StateContent } from "./record-types.ts";
import type { Reading } from "./storage.ts";

/** What is kept of these files now, as a state holds it. */
export async function storedContent(
  storage: Reading,
  files: readonly string[],
  scope: Scope,
): Promise<StateContent> {
  const { entered } = await loadAllEntered(storage, files, scope);
  const texts: [string, string][] = [];
  for (const file of files) {
    const read = await loadDocument(storage, placeOf(file, scope));
    if (read.is === "record") texts.push([file, read.record.text]);
  }
  return { files, entered, texts: Object.fromEntries(texts) };
}

/** A notebook's own file and those it carries, as far as anything is kept of them. */
export async function filesOf(storage: Reading, main: string): Promise<readonly string[]> {
  const files = new Set([main]);
  for (const key of await storage.keys()) {
    const parts = readKey(key);
    if (parts?.main === main && (parts.kind === "document" || parts.kind === "entered"))
      files.add(partsOfPlace(parts.place).file);
  }
  return [...files];
}
