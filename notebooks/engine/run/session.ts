import type { Program } from "../compile/program.ts";
import type {
  CellId,
  CellState,
  Entered,
  Host,
  OutlineCell,
  Surroundings,
  TableText,
  Units,
} from "../types/index.ts";
import { downstream, type LiveCell, liveCell } from "./cell.ts";
import { isEntry, readEntry, readTable } from "./entries.ts";
import { createGraph, type Graph } from "./graph.ts";
import { beginRun } from "./long-work.ts";
import { fixedValue, keyOf, makeFunction } from "./made.ts";
import { outlineOf } from "./outline.ts";
import { Reporter } from "./report.ts";

export interface SessionOptions {
  readonly host: Host;
  readonly program: Program;
  readonly entered?: Entered;
  readonly surroundings: Surroundings;
  /**
   * As on the command line: a bad row makes its table, and all that needs it, an error, instead of
   * being left out. Default no.
   */
  readonly strict?: boolean;
  /** States of the cells that changed; several times a turn where values come late. */
  onValues?(turn: number, cells: readonly CellState[]): void;
  /** Nothing is being worked out any more, long work apart: `working` still waits for that. */
  onSettled?(turn: number, working: readonly CellId[]): void;
  /** A cell's formula is about to run; a table's or an entry's text is about to be read. */
  onStarting?(cell: CellId): void;
  onProgress?(cell: CellId, words: string, fraction: number | undefined): void;
  /** Gives a promise that settles after so many milliseconds. Default: the engine's own timer. */
  wait?(ms: number): Promise<void>;
}

/** A notebook that is open: its cells with their values, kept up to date as entries change. */
export interface Session {
  readonly outline: readonly OutlineCell[];
  /** Takes over what was typed. `turn` is given back with what follows from it. */
  enter(changes: Entered, turn?: number): void;
  /** Gives entries and tables their defaults back. */
  reset(cells: readonly CellId[], turn?: number): void;
  setUnits(units: Units, turn?: number): void;
  /** An ISO date. */
  setToday(today: string, turn?: number): void;
  /** Ends the long work of these cells, or of all; they have an error until something changes. */
  stop(cells?: readonly CellId[]): void;
  /** Runs the formula of a cell again, as after it was stopped. */
  again(cell: CellId): void;
  /** When nothing is being worked out any more, long work apart; at once when that is so now. */
  settled(): Promise<{ readonly working: readonly CellId[] }>;
  /** When all is done, long work too. */
  done(): Promise<void>;
  state(cell: CellId): CellState | undefined;
  /** The value itself; undefined where there is none. */
  value(cell: CellId): unknown;
  /** What has been typed, of cells of this notebook. */
  readonly entered: Entered;
  dispose(): void;
}

/** Opens a compiled notebook: all cells start to be worked out at once. */
export function createSession(options: SessionOptions): Session {
  return new LiveSession(options);
}

/** How long values wait for those that come later before they are reported, in milliseconds. */
const patienceMs = 60;

class LiveSession implements Session {
  readonly outline: readonly OutlineCell[];
  readonly #options: SessionOptions;
  readonly #host: Host;
  readonly #wait: (ms: number) => Promise<void>;
  readonly #cells: ReadonlyMap<CellId, LiveCell>;
  readonly #byKey = new Map<string, LiveCell>();
  readonly #entered = new Map<CellId, string | TableText>();
  readonly #graph: Graph;
  readonly #reporter: Reporter;
  #surroundings: Surroundings;
  #pending = 0;
  #turn = 0;
  #quiet = false;
  #patient = false;
  #disposed = false;
  #working: readonly CellId[] = [];
  #waiters: { readonly all: boolean; readonly resolve: () => void }[] = [];

  constructor(options: SessionOptions) {
    this.#options = options;
    this.#host = options.host;
    this.#wait = options.wait ?? timer;
    this.#surroundings = options.surroundings;
    for (const [id, entered] of Object.entries(options.entered ?? {})) {
      this.#entered.set(id as CellId, entered);
    }
    this.#cells = new Map(options.program.cells.map((cell) => [cell.id, liveCell(cell)]));
    for (const { cell } of this.#cells.values()) {
      for (const taken of cell.takes) this.#cells.get(taken)?.gives.add(cell.id);
    }
    this.outline = outlineOf(options.program.cells, options.host);
    this.#reporter = new Reporter(this.#cells, options.host, options.strict ?? false);
    this.#graph = createGraph(this.#events(), this.#wait);
    this.#defineSurroundings();
    for (const live of this.#cells.values()) this.#defineCell(live);
  }

  #events() {
    return {
      started: (key: string) => this.#started(key),
      value: (key: string, value: unknown) => this.#gotValue(key, value),
      failed: (key: string, error: unknown, input: string | undefined) =>
        this.#failed(key, error, input),
      passed: () => this.#look(),
    };
  }

  #defineSurroundings(): void {
    this.#graph.define("units", [], () => this.#surroundings.units);
    this.#graph.define("today", [], () => this.#host.dateOf(this.#surroundings.today));
  }

  #defineCell(live: LiveCell): void {
    const { cell, keys } = live;
    this.#byKey.set(keys.value, live);
    if (cell.what === "table" && cell.problem === undefined) {
      this.#defineTable(live);
      return;
    }
    this.#byKey.set(keys.formula, live);
    this.#defineFormula(live);
    this.#defineValue(live);
  }

  #defineTable({ cell, keys }: LiveCell): void {
    this.#graph.define(keys.value, [], () => {
      this.#options.onStarting?.(cell.id);
      return readTable(this.#entered.get(cell.id) ?? cell.csv, cell.name, this.#host);
    });
  }

  #defineFormula(live: LiveCell): void {
    const { cell, keys } = live;
    if (cell.problem !== undefined) {
      this.#graph.define(keys.formula, [], () => {
        throw new Error("not compiled");
      });
      return;
    }
    const changing = cell.inputs.flatMap(({ from }) => keyOf(from) ?? []);
    this.#graph.define(keys.formula, changing, this.#runner(live));
  }

  /** The value of an entry is what its text stands for; of any other cell, what its formula gives. */
  #defineValue({ cell, keys }: LiveCell): void {
    this.#graph.define(keys.value, [keys.formula], (given) => {
      if (!isEntry(given)) return given;
      return readEntry(given, this.#textOf(cell.id, given.initial), cell.name);
    });
  }

  #textOf(id: CellId, initial: string): string {
    const entered = this.#entered.get(id);
    return typeof entered === "string" ? entered : initial;
  }

  #runner(live: LiveCell): (...values: readonly unknown[]) => unknown {
    const { cell } = live;
    let made: ReturnType<typeof makeFunction> | undefined;
    return (...values) => {
      this.#options.onStarting?.(cell.id);
      made ??= makeFunction(cell);
      return made(...this.#arguments(live, values));
    };
  }

  #arguments(live: LiveCell, values: readonly unknown[]): readonly unknown[] {
    const run = beginRun(this.#host, {
      progress: (words, fraction) => this.#options.onProgress?.(live.cell.id, words, fraction),
      changed: () => this.#look(),
    });
    live.run = run;
    let next = 0;
    return live.cell.inputs.map(({ from }) => {
      if (keyOf(from) !== undefined) return values[next++];
      if ("library" in from && Object.hasOwn(this.#host.longWork, from.library)) {
        return run.stand(from.library);
      }
      return fixedValue(from, this.#host);
    });
  }

  #started(key: string): void {
    const live = this.#byKey.get(key);
    if (live === undefined) return;
    if (key === live.keys.formula) {
      live.run?.end();
      live.run = undefined;
    }
    if (live.pending.has(key)) return;
    live.pending.add(key);
    this.#pending += 1;
    this.#quiet = false;
  }

  #ended(live: LiveCell, key: string): void {
    live.changed = true;
    if (live.pending.delete(key)) this.#pending -= 1;
  }

  #gotValue(key: string, value: unknown): void {
    const live = this.#byKey.get(key);
    if (live === undefined) return;
    this.#ended(live, key);
    this.#quiet = false;
    if (key === live.keys.formula) live.entry = isEntry(value) ? value : undefined;
    if (key === live.keys.value) {
      live.status = "value";
      live.value = value;
      live.failure = undefined;
    }
    this.#look();
  }

  #failed(key: string, error: unknown, input: string | undefined): void {
    const live = this.#byKey.get(key);
    if (live === undefined) return;
    this.#ended(live, key);
    this.#quiet = false;
    if (key === live.keys.formula) live.entry = undefined;
    const waits = input !== undefined && input !== live.keys.formula;
    if (waits) live.status = "waits";
    // The value's own failure for want of the formula says nothing new.
    else if (input === undefined) {
      live.status = "failed";
      live.failure = error;
    }
    if (live.status !== "value") live.value = undefined;
    this.#look();
  }

  /** Looks whether everything has come to rest, and reports. */
  #look(): void {
    if (this.#disposed || this.#quiet) return;
    if (this.#graph.scheduled) return;
    const working = this.#stillWorking();
    if (working === undefined) {
      this.#reportSoon();
      return;
    }
    this.#quiet = true;
    this.#working = working;
    this.#report();
    this.#options.onSettled?.(this.#turn, working);
    this.#release(working.length === 0);
  }

  /** The cells that only wait for long work; undefined while anything else is being worked out. */
  #stillWorking(): readonly CellId[] | undefined {
    if (this.#pending === 0) return [];
    const pending = [...this.#cells.values()].filter((live) => live.pending.size > 0);
    const busy = pending.filter((live) => (live.run?.working ?? 0) > 0);
    if (busy.length === 0) return undefined;
    const waiting = downstream(
      busy.map(({ cell }) => cell.id),
      this.#cells,
    );
    const all = pending.every((live) => busy.includes(live) || waiting.has(live.cell.id));
    return all ? pending.map(({ cell }) => cell.id) : undefined;
  }

  #reportSoon(): void {
    if (this.#patient || this.#options.onValues === undefined) return;
    this.#patient = true;
    void this.#wait(patienceMs).then(() => {
      this.#patient = false;
      if (!this.#disposed && !this.#quiet) this.#report();
    });
  }

  #report(): void {
    const states = this.#reporter.changes(this.#entered, this.#surroundings.units);
    if (states.length > 0) this.#options.onValues?.(this.#turn, states);
  }

  #release(all: boolean): void {
    const waiters = this.#waiters;
    this.#waiters = waiters.filter((waiter) => waiter.all && !all);
    for (const waiter of waiters) if (all || !waiter.all) waiter.resolve();
  }

  enter(changes: Entered, turn = this.#turn + 1): void {
    this.#begin(turn);
    for (const [id, entered] of Object.entries(changes) as [CellId, string | TableText][]) {
      this.#entered.set(id, entered);
      this.#redefine(id);
    }
    this.#look();
  }

  reset(cells: readonly CellId[], turn = this.#turn + 1): void {
    this.#begin(turn);
    for (const id of cells) if (this.#entered.delete(id)) this.#redefine(id);
    this.#look();
  }

  #begin(turn: number): void {
    this.#turn = turn;
    this.#quiet = false;
  }

  #redefine(id: CellId): void {
    const live = this.#cells.get(id);
    if (live === undefined || live.cell.problem !== undefined) return;
    live.changed = true;
    if (live.cell.what === "table") this.#defineTable(live);
    else if (live.entry !== undefined) this.#defineValue(live);
  }

  setUnits(units: Units, turn = this.#turn + 1): void {
    this.#begin(turn);
    if (units !== this.#surroundings.units) {
      this.#surroundings = { ...this.#surroundings, units };
      for (const live of this.#cells.values()) live.changed = true;
      this.#defineSurroundings();
    }
    this.#look();
  }

  setToday(today: string, turn = this.#turn + 1): void {
    this.#begin(turn);
    if (today !== this.#surroundings.today) {
      this.#surroundings = { ...this.#surroundings, today };
      this.#defineSurroundings();
    }
    this.#look();
  }

  stop(cells: readonly CellId[] = [...this.#cells.keys()]): void {
    for (const id of cells) {
      const live = this.#cells.get(id);
      if (live !== undefined && live.pending.size > 0) live.run?.end();
    }
  }

  again(id: CellId): void {
    const live = this.#cells.get(id);
    if (live === undefined || live.cell.what === "table") return;
    this.#begin(this.#turn);
    this.#defineFormula(live);
  }

  async settled(): Promise<{ readonly working: readonly CellId[] }> {
    if (!this.#quiet) await this.#rest(false);
    return { working: this.#working };
  }

  async done(): Promise<void> {
    if (!this.#quiet || this.#working.length > 0) await this.#rest(true);
  }

  #rest(all: boolean): Promise<void> {
    if (this.#disposed) return Promise.resolve();
    return new Promise((resolve) => {
      this.#waiters.push({ all, resolve });
    });
  }

  state(id: CellId): CellState | undefined {
    return this.#reporter.state(id, this.#entered, this.#surroundings.units);
  }

  value(id: CellId): unknown {
    const live = this.#cells.get(id);
    return live !== undefined && live.status === "value" ? live.value : undefined;
  }

  get entered(): Entered {
    return Object.fromEntries(this.#entered) as Entered;
  }

  dispose(): void {
    this.#disposed = true;
    for (const live of this.#cells.values()) live.run?.end();
    this.#graph.dispose();
    for (const { resolve } of this.#waiters) resolve();
    this.#waiters = [];
  }
}

function timer(ms: number): Promise<void> {
  const { setTimeout } = globalThis as unknown as {
    setTimeout(callback: () => void, ms: number): unknown;
  };
  return new Promise((resolve) => {
    setTimeout(resolve, ms);
  });
}
