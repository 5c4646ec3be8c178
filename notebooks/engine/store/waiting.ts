import type { CellId } from "../types/index.ts";
import type { Journal, Unsafe, UnsafeText } from "./journal.ts";
import { fileOfCell } from "./place.ts";
import type { EnteredValue } from "./record-types.ts";
import type { Changes } from "./write-entries.ts";

/** What waits to be written or is being written, held in the journal until it is safe. */
export class Waiting implements Unsafe {
  readonly entries = new Map<CellId, EnteredValue | undefined>();
  readonly texts = new Map<string, UnsafeText>();
  /** Whether the journal had room for it. */
  held = true;
  readonly #journal: Journal | undefined;
  #newEntries = new Map<CellId, EnteredValue | undefined>();
  #newTexts = new Map<string, UnsafeText>();

  constructor(journal: Journal | undefined) {
    this.#journal = journal;
  }

  get empty(): boolean {
    return this.entries.size === 0 && this.texts.size === 0;
  }

  /** Whether there is something that is not being written yet. */
  get more(): boolean {
    return this.#newEntries.size > 0 || this.#newTexts.size > 0;
  }

  addEntries(changes: Changes): void {
    for (const [id, value] of changes) {
      this.entries.set(id, value);
      this.#newEntries.set(id, value);
    }
    this.#hold();
  }

  addText(place: string, text: UnsafeText): void {
    this.texts.set(place, text);
    this.#newTexts.set(place, text);
    this.#hold();
  }

  /** Takes over what another had, but nothing newer is replaced. Gives false where it is not held safe. */
  takeOver(other: Unsafe): boolean {
    this.addEntries(new Map([...other.entries].filter(([id]) => !this.entries.has(id))));
    for (const [place, text] of other.texts) if (!this.texts.has(place)) this.addText(place, text);
    return this.#journal !== undefined && this.held;
  }

  /** What is to be written next; from now on it is being written. */
  next(): Unsafe {
    const next = { entries: this.#newEntries, texts: this.#newTexts };
    this.#newEntries = new Map();
    this.#newTexts = new Map();
    return next;
  }

  /** All that is not safe waits again. */
  again(): void {
    this.#newEntries = new Map(this.entries);
    this.#newTexts = new Map(this.texts);
  }

  wrote(changes: Changes): void {
    for (const [id, value] of changes)
      if (this.entries.get(id) === value && !this.#newEntries.has(id)) this.entries.delete(id);
    this.#hold();
  }

  wroteText(place: string, text: UnsafeText): void {
    if (this.texts.get(place) === text) this.texts.delete(place);
    this.#hold();
  }

  entriesAt(place: string): Changes {
    return new Map([...this.entries].filter(([id]) => fileOfCell(id) === place));
  }

  #hold(): void {
    this.held = this.#journal?.hold(this) ?? false;
  }
}
