import type { CompiledCell, Program } from "../compile/index.ts";
import type {
  CellId,
  CellState,
  Entered,
  Host,
  OutlineCell,
  Surroundings,
  Units,
} from "../types/index.ts";
import { failed, type LiveCell, liveCells, orderOf, runsTheSame, tookValue } from "./cell.ts";
import { Definitions, isReadTable } from "./definitions.ts";
import { createGraph, type Graph, type GraphEvents } from "./graph.ts";
import { outlineOf } from "./outline.ts";
import { Reporter } from "./report.ts";
import { Rest, type RestEvents } from "./rest.ts";

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
  /**
   * Whether a cell takes each better result of its long work as its value while the work goes on,
   * or the final one only. Default yes.
   */
  readonly improving?: boolean;
  /** What is known of the cells before they run: at once, and at each edit before what comes of it. */
  onOutline?(cells: readonly OutlineCell[]): void;
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
  /** As of the last edit. */
  readonly outline: readonly OutlineCell[];
  /** Takes over what was typed. `turn` is given back with what follows from it. */
  enter(changes: Entered, turn?: number): void;
  /** Gives entries and tables their defaults back. */
  reset(cells: readonly CellId[], turn?: number): void;
  setUnits(units: Units, turn?: number): void;
  /** An ISO date. */
  setToday(today: string, turn?: number): void;
  /**
   * Goes on with an edited program: cells that run as before keep their values, their entries and
   * their long work; only what was edited, and what rests on it, is worked out anew.
   *
   * @param entered all that is entered now
   */
  edit(program: Program, entered: Entered, turn?: number): void;
  /**
   * Ends the long work of these cells, or of all. The best result so far stands as if it were the
   * final one; a cell that has none yet has an error until something changes.
   */
  stop(cells?: readonly CellId[]): void;
  /** Runs the formula of a cell again, as after it was stopped. */
  again(cell: CellId, turn?: number): void;
  /** When nothing is being worked out any more, long work apart; at once when that is so now. */
  settled(): Promise<{ readonly working: readonly CellId[] }>;
  /** When all is done, long work too. */
  done(): Promise<void>;
  /** Cells that have not come to an end, as one whose promise never settles. */
  unfinished(): readonly CellId[];
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

class LiveSession implements Session {
  outline: readonly OutlineCell[] = [];
  readonly #options: SessionOptions;
  /** The very same map for as long as the session lives: its parts hold on to it. */
  readonly #cells: Map<CellId, LiveCell>;
  readonly #byKey = new Map<string, LiveCell>();
  readonly #entered = new Map<CellId, Entered[CellId]>();
  readonly #graph: Graph;
  readonly #definitions: Definitions;
  readonly #reporter: Reporter;
  readonly #rest: Rest;
  #surroundings: Surroundings;
  #turn = 0;

  constructor(options: SessionOptions) {
    const { host, program, entered = {}, strict = false, wait = timer } = options;
    this.#options = options;
    this.#surroundings = options.surroundings;
    for (const [id, value] of Object.entries(entered)) this.#entered.set(id as CellId, value);
    this.#cells = liveCells(program);
    for (const live of this.#cells.values()) this.#index(live);
    this.#outlined(program);
    this.#reporter = new Reporter(this.#cells, host, strict);
    this.#graph = createGraph(this.#graphEvents(), wait);
    this.#rest = new Rest(this.#cells, this.#restEvents(), wait);
    this.#definitions = this.#define(wait);
  }

  #outlined({ cells }: Program): void {
    this.outline = outlineOf(cells, this.#options.host);
    this.#options.onOutline?.(this.outline);
  }

  #graphEvents(): GraphEvents {
    return {
      started: (key) => this.#started(key),
      value: (key, value) => this.#came(key, (live) => tookValue(live, key, value)),
      failed: (key, error, input) => this.#came(key, (live) => failed(live, key, error, input)),
      stepping: (key) => this.#stepping(key),
      passed: () => this.#rest.look(),
    };
  }

  #restEvents(): RestEvents {
    return {
      scheduled: () => this.#graph.scheduled,
      report: () => this.#report(),
      settled: (working) => this.#options.onSettled?.(this.#turn, working),
    };
  }

  #define(wait: (ms: number) => Promise<void>): Definitions {
    const { host, onStarting, onProgress, improving = true } = this.#options;
    const definitions = new Definitions({
      graph: this.#graph,
      host,
      entered: (id) => this.#entered.get(id),
      surroundings: () => this.#surroundings,
      starting: (id) => onStarting?.(id),
      progress: (id, words, fraction) => onProgress?.(id, words, fraction),
      calls: (more) => this.#rest.calls(more),
      wait,
      order: (id) => orderOf(id, this.#cells),
      improving,
    });
    definitions.surroundings("units");
    definitions.surroundings("today");
    for (const live of this.#cells.values()) definitions.cell(live);
    return definitions;
  }

  #index(live: LiveCell): void {
    for (const key of Object.values(live.keys)) this.#byKey.set(key, live);
  }

  #started(key: string): void {
    const live = this.#byKey.get(key);
    if (live === undefined) return;
    if (key === live.keys.formula) {
      live.run?.end();
      live.run = undefined;
    }
    this.#rest.started(live, key);
  }

  #stepping(key: string): void {
    const live = this.#byKey.get(key);
    // The steps of long work are worked out elsewhere.
    if (live?.cell.generator) this.#options.onStarting?.(live.cell.id);
  }

  #came(key: string, take: (live: LiveCell) => void): void {
    const live = this.#byKey.get(key);
    if (live === undefined) return;
    // What was entered may be new though the formula of its entry is not.
    if (!live.reused || live.entry !== undefined || live.status !== "value") live.changed = true;
    take(live);
    const improves = key === live.keys.formula && live.run?.improving === true;
    if (!improves) this.#rest.ended(live, key);
    this.#rest.look();
  }

  #report(): void {
    const states = this.#reporter.changes(this.#entered, this.#surroundings.units);
    if (states.length > 0) this.#options.onValues?.(this.#turn, states);
  }

  #inTurn(turn: number, change: () => void): void {
    this.#turn = turn;
    this.#rest.disturb();
    change();
    this.#rest.look();
  }

  enter(changes: Entered, turn = this.#turn + 1): void {
    this.#inTurn(turn, () => {
      for (const [id, value] of Object.entries(changes) as [CellId, Entered[CellId]][]) {
        this.#entered.set(id, value);
        this.#readAgain(id);
      }
    });
  }

  reset(cells: readonly CellId[], turn = this.#turn + 1): void {
    this.#inTurn(turn, () => {
      for (const id of cells) if (this.#entered.delete(id)) this.#readAgain(id);
    });
  }

  #readAgain(id: CellId): void {
    const live = this.#cells.get(id);
    if (live === undefined || live.cell.problem !== undefined) return;
    live.changed = true;
    if (live.cell.what === "table") this.#definitions.table(live);
    else if (live.entry !== undefined) this.#definitions.value(live);
  }

  setUnits(units: Units, turn = this.#turn + 1): void {
    this.#inTurn(turn, () => {
      if (units === this.#surroundings.units) return;
      this.#surroundings = { ...this.#surroundings, units };
      for (const live of this.#cells.values()) live.changed = true;
      this.#definitions.surroundings("units");
    });
  }

  setToday(today: string, turn = this.#turn + 1): void {
    this.#inTurn(turn, () => {
      if (today === this.#surroundings.today) return;
      this.#surroundings = { ...this.#surroundings, today };
      this.#definitions.surroundings("today");
    });
  }

  edit(program: Program, entered: Entered, turn = this.#turn + 1): void {
    this.#inTurn(turn, () => {
      const before = new Map(this.#cells);
      const now = liveCells(program, before);
      this.#cells.clear();
      for (const [id, live] of now) this.#cells.set(id, live);
      this.#outlined(program);
      for (const [id, live] of before) if (!now.has(id)) this.#takeOut(live);
      for (const cell of program.cells) this.#takeIn(cell, before.get(cell.id));
      this.#enterAll(entered, before);
    });
  }

  #takeOut(live: LiveCell): void {
    this.#clear(live);
    for (const key of Object.values(live.keys)) this.#byKey.delete(key);
  }

  /** Takes it out of the graph, with all that its formula has made. */
  #clear(live: LiveCell): void {
    live.run?.end();
    live.run = undefined;
    live.entry = undefined;
    live.readings = [];
    for (const key of [...live.pending]) this.#rest.ended(live, key);
    this.#definitions.remove(live);
  }

  #takeIn(cell: CompiledCell, before: LiveCell | undefined): void {
    const live = this.#cells.get(cell.id);
    if (live === undefined) return;
    if (before === undefined) {
      this.#index(live);
      this.#definitions.cell(live);
      return;
    }
    const old = before.cell;
    live.cell = cell;
    // Its line, its hints or a title it takes may be others, though it runs the same.
    live.changed = true;
    if (runsTheSame(old, cell)) return;
    if (isReadTable(old) !== isReadTable(cell)) this.#clear(live);
    this.#definitions.cell(live);
  }

  /** Reads again where something else is entered than was. */
  #enterAll(entered: Entered, before: ReadonlyMap<CellId, LiveCell>): void {
    const was = new Map(this.#entered);
    this.#entered.clear();
    for (const [id, value] of Object.entries(entered) as [CellId, Entered[CellId]][])
      this.#entered.set(id, value);
    for (const id of new Set([...was.keys(), ...this.#entered.keys()]))
      if (before.has(id) && !sameEntered(was.get(id), this.#entered.get(id))) this.#readAgain(id);
  }

  stop(cells: readonly CellId[] = [...this.#cells.keys()]): void {
    for (const id of cells) {
      const live = this.#cells.get(id);
      if (live !== undefined && live.pending.size > 0) live.run?.stop();
    }
  }

  again(id: CellId, turn = this.#turn + 1): void {
    const live = this.#cells.get(id);
    if (live === undefined || live.cell.what === "table") return;
    this.#inTurn(turn, () => this.#definitions.formula(live));
  }

  settled(): Promise<{ readonly working: readonly CellId[] }> {
    return this.#rest.settled();
  }

  done(): Promise<void> {
    return this.#rest.done();
  }

  unfinished(): readonly CellId[] {
    return this.#rest.unfinished();
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
    this.#rest.end();
    for (const live of this.#cells.values()) live.run?.end();
    this.#graph.dispose();
  }
}

/** Taken hold of now: in the closed room it is taken away from cells later. */
const { setTimeout: later } = globalThis as unknown as {
  setTimeout(callback: () => void, ms: number): unknown;
};

/** Whether the same is entered; tables come anew with each message. */
function sameEntered(
  one: Entered[CellId] | undefined,
  other: Entered[CellId] | undefined,
): boolean {
  if (typeof one !== "object" || typeof other !== "object") return one === other;
  return JSON.stringify(one) === JSON.stringify(other);
}

function timer(ms: number): Promise<void> {
  return new Promise((resolve) => {
    later(resolve, ms);
  });
}
