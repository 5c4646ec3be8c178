import type { CellId, Entered, Notebook, ToRoom, Units } from "../types/index.ts";
import type { EnteredValue } from "./book.ts";

/** Documents as they are after an edit, with all that is entered. */
export interface Edited {
  readonly documents: Readonly<Record<string, Notebook>>;
  readonly entered: Entered;
}

/** A cell that waits on something of its own must not hold up what is entered meanwhile. */
const longestWait = 600;

/**
 * Sends what is entered, one turn at a time: while the room works one out, newer values gather and
 * only the newest goes next. So a key held down never builds a queue.
 */
export class Turns {
  private session = 0;
  private turn = 0;
  private busy = false;
  private waiting = new Map<CellId, EnteredValue | undefined>();
  private edited: (() => Edited) | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private readonly post: (message: ToRoom) => void;

  constructor(post: (message: ToRoom) => void) {
    this.post = post;
  }

  /** A new room was opened with everything entered so far. */
  restart(session: number): void {
    this.session = session;
    this.waiting = new Map();
    this.edited = undefined;
    this.begin();
  }

  /** The documents were edited; `now` gives them as they are when their turn comes. */
  edit(now: () => Edited): void {
    this.edited = now;
    if (!this.busy) this.send();
  }

  enter(values: ReadonlyMap<CellId, EnteredValue | undefined>): void {
    for (const [id, value] of values) this.waiting.set(id, value);
    if (!this.busy) this.send();
  }

  units(units: Units): void {
    this.turn += 1;
    this.post({ kind: "units", session: this.session, turn: this.turn, units });
  }

  /** Runs a cell's formula once more. */
  again(cell: CellId): void {
    this.turn += 1;
    this.post({ kind: "again", session: this.session, turn: this.turn, cell });
  }

  settled(turn: number): void {
    if (turn < this.turn) return;
    this.free();
  }

  private free(): void {
    clearTimeout(this.timer);
    this.busy = false;
    if (this.waiting.size > 0 || this.edited) this.send();
  }

  private begin(): void {
    clearTimeout(this.timer);
    this.busy = true;
    this.timer = setTimeout(() => this.free(), longestWait);
  }

  private send(): void {
    if (this.edited) this.sendEdit(this.edited());
    else this.sendEntered();
    this.begin();
  }

  /** What is entered goes with it: a cell may have been renamed. */
  private sendEdit(edited: Edited): void {
    this.edited = undefined;
    this.waiting = new Map();
    this.turn += 1;
    this.post({ kind: "edit", session: this.session, turn: this.turn, ...edited });
  }

  private sendEntered(): void {
    const changes: Record<CellId, EnteredValue> = {};
    const cells: CellId[] = [];
    for (const [id, value] of this.waiting) {
      if (value === undefined) cells.push(id);
      else changes[id] = value;
    }
    this.waiting = new Map();
    const { session } = this;
    if (cells.length > 0) {
      this.turn += 1;
      this.post({ kind: "reset", session, turn: this.turn, cells });
    }
    if (Object.keys(changes).length > 0) {
      this.turn += 1;
      this.post({ kind: "enter", session, turn: this.turn, changes: changes satisfies Entered });
    }
  }
}
