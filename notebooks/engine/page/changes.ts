import { writeNotebook } from "../document/index.ts";
import type { CellId } from "../types/index.ts";
import type { Book, EnteredValue } from "./book.ts";

/** What entries, tables and documents are to hold: one thing the reader did, seen from either side. */
export interface Change {
  readonly entered: ReadonlyMap<CellId, EnteredValue | undefined>;
  /** Whole texts of documents, by file. */
  readonly texts: ReadonlyMap<string, string>;
}

/** Typing in one place is one change until this long (milliseconds) has passed without a key. */
const pause = 4_000;
const mostKept = 200;

/** What was done to a notebook, so that it can be undone and done again, the last first. */
export class History {
  private readonly done: { change: Change; place: string | undefined; at: number }[] = [];
  private undone: Change[] = [];

  /**
   * Notes how things were before a change that is about to be made. Gives true where it begins a
   * new one, false where it goes on with the last (the same place, typed on).
   *
   * @param place where it is typed; undefined where it stands by itself
   */
  note(before: Change, now: number, place: string | undefined): boolean {
    this.undone = [];
    const last = this.done.at(-1);
    if (last && place !== undefined && last.place === place && now - last.at < pause) {
      last.at = now;
      return false;
    }
    this.done.push({ change: before, place, at: now });
    if (this.done.length > mostKept) this.done.shift();
    return true;
  }

  /**
   * Takes the last change out, to be undone.
   *
   * @param now gives how the things a change is about are now
   */
  undo(now: (change: Change) => Change): Change | undefined {
    const last = this.done.pop();
    if (!last) return undefined;
    this.undone.push(now(last.change));
    return last.change;
  }

  /** Takes the last undone change out, to be done again. */
  redo(now: (change: Change) => Change): Change | undefined {
    const last = this.undone.pop();
    if (!last) return undefined;
    this.done.push({ change: now(last), place: undefined, at: 0 });
    return last;
  }

  get empty(): boolean {
    return this.done.length === 0;
  }

  get nothingUndone(): boolean {
    return this.undone.length === 0;
  }
}

/** What the things a change is about hold now. */
export function asItIs(
  { documents, entered }: Pick<Book, "documents" | "entered">,
  change: Change,
): Change {
  const textOf = (file: string) => {
    const notebook = documents.get(file);
    return notebook ? writeNotebook(notebook) : "";
  };
  return {
    entered: new Map([...change.entered.keys()].map((id) => [id, entered.get(id)])),
    texts: new Map([...change.texts.keys()].map((file) => [file, textOf(file)])),
  };
}
