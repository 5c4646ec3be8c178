import type { CellId } from "../types/index.ts";
import type { EnteredValue } from "./book.ts";

/** One thing the reader did: what the cells held before it. */
export interface Change {
  readonly before: ReadonlyMap<CellId, EnteredValue | undefined>;
}

/** Typing in one field is one change until this long (milliseconds) has passed without a key. */
const pause = 4_000;
const mostKept = 200;

/** What was done, so that it can be undone, the last first. */
export class History {
  private readonly done: { change: Change; cell: CellId | undefined; at: number }[] = [];

  /**
   * Notes a change before it is made. Gives true where it begins a new one, false where it goes on
   * with the last (the same field, typed on).
   */
  note(before: ReadonlyMap<CellId, EnteredValue | undefined>, now: number): boolean {
    const [cell] = before.size === 1 ? [...before.keys()] : [];
    const last = this.done.at(-1);
    const goesOn =
      last !== undefined && cell !== undefined && last.cell === cell && now - last.at < pause;
    if (goesOn) {
      last.at = now;
      return false;
    }
    this.done.push({ change: { before: new Map(before) }, cell, at: now });
    if (this.done.length > mostKept) this.done.shift();
    return true;
  }

  /** Takes the last change out, to be undone. */
  take(): Change | undefined {
    return this.done.pop()?.change;
  }

  get empty(): boolean {
    return this.done.length === 0;
  }
}
