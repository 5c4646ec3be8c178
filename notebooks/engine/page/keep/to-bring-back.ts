import type { StateRecord } from "../../store/index.ts";
import type { CellId } from "../../types/index.ts";
import { type EnteredValue, partsOf } from "../book.ts";
import { isSame } from "./differences.ts";
import type { ContentNow } from "./kept.ts";

/** What the page has to change so that it is as it was; one change that can be undone. */
export interface ToBringBack {
  readonly texts: ReadonlyMap<string, string>;
  readonly entered: ReadonlyMap<CellId, EnteredValue | undefined>;
  /** What stays as it is, in words for the reader. */
  readonly stays: readonly string[];
}

/**
 * What brings an earlier state back. A document that is not open any more, or not the reader's own,
 * stays as it is; so does what is entered in other documents where it was kept elsewhere then.
 */
export function toBringBack(state: StateRecord, now: ContentNow): ToBringBack {
  const texts = new Map<string, string>();
  const stays: string[] = [];
  for (const [file, text] of Object.entries(state.texts)) {
    const there = now.texts[file];
    if (there === undefined)
      stays.push(`The words and formulas of ${file} stay: it is no part of this notebook now.`);
    else if (there !== text) texts.set(file, text);
  }
  const moved = state.apart !== now.apart;
  const files = state.files.filter(
    (file) => now.files.includes(file) && (!moved || file === now.main),
  );
  const left = state.files.filter((file) => !files.includes(file));
  if (left.length > 0)
    stays.push(
      `What is entered in ${left.join(", ")} stays: ${moved ? "it was kept elsewhere then." : "it is no part of this notebook now."}`,
    );
  const entered = new Map<CellId, EnteredValue | undefined>();
  for (const id of new Set([
    ...Object.keys(state.entered),
    ...Object.keys(now.entered),
  ] as CellId[])) {
    const then = state.entered[id];
    if (files.includes(partsOf(id)[0]) && !isSame(then, now.entered[id])) entered.set(id, then);
  }
  return { texts, entered, stays };
}
