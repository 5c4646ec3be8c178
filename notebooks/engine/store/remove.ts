import type { CellId } from "../types/index.ts";
import { documentKey } from "./documents.ts";
import { readKey } from "./keys.ts";
import { good, type Outcome, refused } from "./outcome.ts";
import { partsOfPlace } from "./place.ts";
import type { DocumentRecord, EnteredValue, StateContent } from "./record-types.ts";
import { readRecord } from "./records.ts";
import { indexOf, noteStateIn, putIndex, stateKey, statesKey } from "./states.ts";
import type { Step, Storage } from "./storage.ts";
import { notKept, notWrittenOver } from "./words.ts";

/**
 * Takes one of the reader's own notebooks off the shelf, with what it carries, its entries and its
 * plans. All of it goes to its earlier states, so that it can be brought back.
 *
 * @param at the ISO instant now
 */
export async function removeDocument(
  storage: Storage,
  file: string,
  { at }: { readonly at: string },
): Promise<Outcome<undefined>> {
  try {
    return await storage.together(async (step): Promise<Outcome<undefined>> => {
      const there = readRecord("document", await step.get(documentKey(file)));
      if (there.is === "absent") return refused(`There is no notebook ${file} of your own.`);
      if (there.is !== "record") return refused(notWrittenOver(file, there));
      const { title, ownGarden } = there.record;
      const whole = await wholeOf(step, file);
      const content = contentIn(whole);
      const state = {
        ...content,
        main: file,
        at,
        why: "removing",
        apart: !ownGarden,
        whole,
      } as const;
      const number = await noteStateIn(step, state);
      const index = await indexOf(step, file);
      if (number === undefined || index === undefined)
        return refused(notWrittenOver(file, { is: "broken" }));
      await putIndex(step, { ...index, removed: { title, at } });
      for (const key of Object.keys(whole)) await step.remove(key);
      return good(undefined);
    });
  } catch (error) {
    return refused(notKept(error));
  }
}

/** All records of the notebook but its states, by key. */
async function wholeOf(step: Step, main: string): Promise<Readonly<Record<string, unknown>>> {
  const whole: [string, unknown][] = [];
  for (const key of await step.keys()) {
    const parts = readKey(key);
    if (parts?.main !== main || parts.kind === "state" || parts.kind === "states") continue;
    whole.push([key, await step.get(key)]);
  }
  return Object.fromEntries(whole);
}

function contentIn(whole: Readonly<Record<string, unknown>>): StateContent {
  const files = new Set<string>();
  const texts = new Map<string, string>();
  const entered = new Map<CellId, EnteredValue>();
  for (const [key, stored] of Object.entries(whole)) {
    const { file } = partsOfPlace(readKey(key)?.place ?? "");
    const document = readRecord("document", stored);
    const entries = readRecord("entered", stored);
    if (document.is === "record") texts.set(file, document.record.text);
    if (document.is === "record" || entries.is === "record") files.add(file);
    if (entries.is === "record")
      for (const [name, value] of Object.entries(entries.record.cells))
        entered.set(`${file}#${name}`, value);
  }
  return {
    files: [...files],
    texts: Object.fromEntries(texts),
    entered: Object.fromEntries(entered),
  };
}

/** A notebook that was removed and can be brought back. */
export interface Removed {
  readonly file: string;
  readonly title: string;
  /** ISO instant. */
  readonly at: string;
}

/** The notebooks that were removed, the last first. */
export async function listRemoved(storage: Storage): Promise<readonly Removed[]> {
  const found: Removed[] = [];
  for (const key of await storage.keys()) {
    const parts = readKey(key);
    if (parts?.kind !== "states") continue;
    const read = readRecord("states", await storage.get(key));
    if (read.is === "record" && read.record.removed)
      found.push({ file: parts.main, ...read.record.removed });
  }
  return found.toSorted((a, b) => (a.at < b.at ? 1 : -1));
}

/** Puts a notebook that was removed back on the shelf, as it was. Nothing that is there is written over. */
export async function bringBackDocument(
  storage: Storage,
  file: string,
): Promise<Outcome<DocumentRecord>> {
  try {
    return await storage.together(async (step): Promise<Outcome<DocumentRecord>> => {
      const index = await indexOf(step, file);
      if (index?.removed === undefined) return refused(`${file} was not removed.`);
      const whole = await newestWhole(
        step,
        file,
        index.states.map(({ number }) => number),
      );
      const document = readRecord("document", whole?.[documentKey(file)]);
      if (whole === undefined || document.is !== "record")
        return refused(`What was kept of ${file} when it was removed can't be read any more.`);
      for (const [key, record] of Object.entries(whole))
        if (readKey(key)?.main === file && (await step.get(key)) === undefined)
          await step.put(key, record);
      const { removed: _, ...rest } = index;
      await step.put(statesKey(file), rest);
      return good(document.record);
    });
  } catch (error) {
    return refused(notKept(error));
  }
}

async function newestWhole(step: Step, main: string, numbers: readonly number[]) {
  for (const number of numbers.toReversed()) {
    const read = readRecord("state", await step.get(stateKey(main, number)));
    if (read.is === "record" && read.record.whole) return read.record.whole;
  }
  return undefined;
}
