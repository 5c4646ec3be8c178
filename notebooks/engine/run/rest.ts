import type { CellId } from "../types/index.ts";
import { downstream, type LiveCell } from "./cell.ts";

export interface RestEvents {
  /** Whether a pass is about to begin. */
  scheduled(): boolean;
  /** Tell what has changed so far. */
  report(): void;
  /** All has come to rest, but for these, which wait for long work. */
  settled(working: readonly CellId[]): void;
}

/** How long values wait for those that come later before they are reported, in milliseconds. */
const patienceMs = 60;

/** Knows what is still being worked out, and when nothing is any more. */
export class Rest {
  readonly #cells: ReadonlyMap<CellId, LiveCell>;
  readonly #events: RestEvents;
  readonly #wait: (ms: number) => Promise<void>;
  #pending = 0;
  #calls = 0;
  #quiet = false;
  #patient = false;
  #over = false;
  #working: readonly CellId[] = [];
  #waiters: { readonly all: boolean; readonly resolve: () => void }[] = [];

  constructor(
    cells: ReadonlyMap<CellId, LiveCell>,
    events: RestEvents,
    wait: (ms: number) => Promise<void>,
  ) {
    this.#cells = cells;
    this.#events = events;
    this.#wait = wait;
  }

  /** Something has changed: what comes to rest after this is told again. */
  disturb(): void {
    this.#quiet = false;
  }

  started(live: LiveCell, key: string): void {
    this.#quiet = false;
    if (live.pending.has(key)) return;
    live.pending.add(key);
    this.#pending += 1;
  }

  ended(live: LiveCell, key: string): void {
    this.#quiet = false;
    if (live.pending.delete(key)) this.#pending -= 1;
  }

  /** A call of long work has begun (1) or ended (-1). */
  calls(more: 1 | -1): void {
    this.#calls += more;
    this.look();
  }

  /** Looks whether everything has come to rest, and says so once. */
  look(): void {
    if (this.#over || this.#quiet || this.#events.scheduled()) return;
    const working = this.#stillWorking();
    if (working === undefined) {
      this.#reportSoon();
      return;
    }
    this.#quiet = true;
    this.#working = working;
    this.#events.report();
    this.#events.settled(working);
    this.#release(working.length === 0);
  }

  /** The cells that only wait for long work; undefined while anything else is being worked out. */
  #stillWorking(): readonly CellId[] | undefined {
    if (this.#pending === 0) return [];
    if (this.#calls === 0) return undefined;
    const pending = [...this.#cells.values()].filter((live) => live.pending.size > 0);
    const busy = pending.filter((live) => (live.run?.working ?? 0) > 0).map(({ cell }) => cell.id);
    const waiting = new Set([...busy, ...downstream(busy, this.#cells)]);
    if (!pending.every(({ cell }) => waiting.has(cell.id))) return undefined;
    // What rests on a result that may still get better has a value, but not its last one.
    return [...this.#cells.values()]
      .filter(({ cell }) => waiting.has(cell.id) && cell.problem === undefined)
      .map(({ cell }) => cell.id);
  }

  #reportSoon(): void {
    if (this.#patient) return;
    this.#patient = true;
    void this.#wait(patienceMs).then(() => {
      this.#patient = false;
      if (!this.#over && !this.#quiet) this.#events.report();
    });
  }

  #release(all: boolean): void {
    const ready = this.#waiters.filter((waiter) => all || !waiter.all);
    this.#waiters = this.#waiters.filter((waiter) => !ready.includes(waiter));
    for (const { resolve } of ready) resolve();
  }

  async settled(): Promise<{ readonly working: readonly CellId[] }> {
    if (!this.#quiet) await this.#rest(false);
    return { working: this.#working };
  }

  async done(): Promise<void> {
    if (!this.#quiet || this.#working.length > 0) await this.#rest(true);
  }

  #rest(all: boolean): Promise<void> {
    if (this.#over) return Promise.resolve();
    return new Promise((resolve) => {
      this.#waiters.push({ all, resolve });
    });
  }

  /** Cells that have not come to an end. */
  unfinished(): readonly CellId[] {
    return [...this.#cells.values()]
      .filter(({ pending }) => pending.size > 0)
      .map(({ cell }) => cell.id);
  }

  /** Nobody is waiting any more. */
  end(): void {
    this.#over = true;
    this.#release(true);
  }
}
