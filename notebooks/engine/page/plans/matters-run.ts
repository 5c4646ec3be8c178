import {
  type Answer,
  answerOf,
  feeding,
  type OwnRange,
  stepsBetween,
  type Trial,
  type Varied,
  variedEntry,
} from "../../plans/index.ts";
import type { CellId, CellState, Entered, OutlineCell } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { SideRoom, type SideRun } from "../side-room.ts";
import { enteredNow } from "./keep.ts";

/** What came of one trial. */
export type Tried =
  | { readonly is: "answer"; readonly text: string; readonly answer: Answer }
  /** The entry does not take the text. */
  | { readonly is: "refused"; readonly text: string; readonly why: string }
  /** It does, but then there is no answer. */
  | { readonly is: "failed"; readonly text: string; readonly why: string };

export interface MattersAsked {
  readonly answer: CellId;
  /** The usual range: a share of the value, under and over. */
  readonly share: number;
  readonly ranges: Readonly<Record<CellId, OwnRange>>;
}

export interface MattersState {
  readonly is: "opening" | "ready" | "running" | "stopped" | "done" | "failed";
  readonly why?: string;
  /** The answer as it is now. */
  readonly present?: Answer;
  /** Entries the answer rests on, in the documents' order. */
  readonly varied: readonly Varied[];
  readonly tried: ReadonlyMap<string, Tried>;
  readonly done: number;
  readonly total: number;
  /** About how long the rest takes, in seconds, where that is known. */
  readonly left?: number;
}

/** A trial that takes longer (milliseconds) is cut short: the best found by then counts. */
const longest = 10_000;

/** What takes less in all (seconds) is done without being asked for once more. */
const shortEnough = 45;

/** So many trials tell how long one takes: the first has more to do than the others. */
const enoughToTell = 3;

export function keyOf({ id, candidates }: Trial): string {
  return `${id}\n${candidates.join("\n")}`;
}

const nothing: MattersState = {
  is: "opening",
  varied: [],
  tried: new Map(),
  done: 0,
  total: 0,
};

/**
 * Varies the entries an answer rests on, one at a time and the others as they are, in a closed room
 * beside the page. What has been tried is not tried again while nothing else changes.
 */
export class MattersRun {
  readonly #context: Context;
  readonly #room: SideRoom;
  readonly #changed: () => void;
  #asked: MattersAsked | undefined;
  #state: MattersState = nothing;
  #tried = new Map<string, Tried>();
  #outline: ReadonlyMap<CellId, OutlineCell> = new Map();
  #base: Entered = {};
  #inRoom: Entered | undefined;
  #states: ReadonlyMap<CellId, CellState> = new Map();
  #run = 0;
  /** Milliseconds that trials took, or the opening in their place. */
  #times: number[] = [];

  constructor(context: Context, changed: () => void) {
    this.#context = context;
    this.#changed = changed;
    this.#room = new SideRoom(context.options);
  }

  get state(): MattersState {
    return this.#state;
  }

  /** Opens the notebook as it is now; what is quickly done begins by itself. */
  async open(asked: MattersAsked): Promise<void> {
    this.#asked = asked;
    this.#run += 1;
    const run = this.#run;
    this.#tried = new Map();
    this.#times = [];
    this.#inRoom = undefined;
    this.#base = enteredNow(this.#context);
    this.#set({ ...nothing, varied: this.#state.varied });
    try {
      const { book, driver } = this.#context;
      const { main, documents } = book;
      const notebook = { main: main.file, documents, entered: this.#base, units: driver.units };
      const began = performance.now();
      const came = await this.#timed((enough) => this.#room.open(notebook, undefined, enough));
      if (run !== this.#run) return;
      this.#outline = new Map(came.outline.map((cell) => [cell.id, cell]));
      this.#states = came.states;
      this.#inRoom = this.#base;
      this.#times = [performance.now() - began];
      this.#lay();
      await this.begin("until it is known how long it takes");
    } catch (error) {
      if (run === this.#run) this.#failed(error);
    }
  }

  /** Other bounds, with all else as it was: only what is new is tried. */
  async ranges(asked: MattersAsked): Promise<void> {
    const began = this.#state.is !== "ready" && this.#state.is !== "stopped";
    this.#asked = asked;
    this.#run += 1;
    this.#lay();
    if (began) await this.begin();
    else this.#changed();
  }

  /** Begins, or goes on where it was stopped. */
  async begin(
    how: "to the end" | "until it is known how long it takes" = "to the end",
  ): Promise<void> {
    this.#run += 1;
    const run = this.#run;
    this.#set({ is: "running" });
    for (const trial of this.#left()) {
      const began = performance.now();
      const tried = await this.#try(trial, run);
      if (run !== this.#run || tried === undefined) return;
      // The first has code to load and counts for nothing once there are others to go by.
      this.#times = [...(this.#tried.size < 2 ? [] : this.#times), performance.now() - began];
      this.#tried.set(keyOf(trial), tried);
      this.#count({});
      const isLong = this.#tried.size >= enoughToTell && (this.#state.left ?? 0) > shortEnough;
      if (how !== "to the end" && isLong) {
        this.#set({ is: "ready" });
        return;
      }
    }
    this.#count({ is: "done" });
  }

  stop(): void {
    this.#run += 1;
    this.#inRoom = undefined;
    this.#room.end();
    this.#set({ is: "stopped" });
  }

  remove(): void {
    this.#run += 1;
    this.#room.remove();
  }

  /** What is to be tried, from the entries as they came. */
  #lay(): void {
    const asked = this.#asked;
    if (!asked) return;
    const present = answerOf(this.#states.get(asked.answer));
    const feeds = feeding(asked.answer, this.#outline);
    const varied = [...this.#outline.keys()].flatMap((id): Varied[] => {
      const entry = this.#states.get(id)?.entry;
      if (!entry || !feeds.has(id)) return [];
      const base = this.#base[id];
      const own = asked.ranges[id];
      const text = typeof base === "string" ? base : entry.initial;
      return [variedEntry(id, { ...entry, text }, { share: asked.share, own })];
    });
    this.#count({ varied, ...(present === undefined ? {} : { present }) });
  }

  #trials(varied: readonly Varied[]): readonly Trial[] {
    return varied.flatMap(({ trials }) => trials);
  }

  #left(): readonly Trial[] {
    return this.#trials(this.#state.varied).filter((trial) => !this.#tried.has(keyOf(trial)));
  }

  #count(changes: Partial<MattersState>): void {
    const { varied } = { ...this.#state, ...changes };
    const all = this.#trials(varied);
    const done = all.filter((trial) => this.#tried.has(keyOf(trial))).length;
    const each = this.#times.reduce((sum, time) => sum + time, 0) / (this.#times.length || 1);
    const left = Math.ceil((each * (all.length - done)) / 1000);
    this.#set({ ...changes, tried: new Map(this.#tried), done, total: all.length, left });
  }

  /** The first text that the entry takes; a room that broke is opened again for the next trial. */
  async #try({ id, candidates }: Trial, run: number): Promise<Tried | undefined> {
    let refused: Tried | undefined;
    for (const text of candidates) {
      try {
        const { states } = await this.#enter({ ...this.#base, [id]: text });
        if (run !== this.#run) return undefined;
        const problem = states.get(id)?.entry?.problem;
        if (problem !== undefined) {
          refused ??= { is: "refused", text, why: problem.sentence };
          continue;
        }
        const answer = this.#asked && answerOf(states.get(this.#asked.answer));
        return answer === undefined
          ? { is: "failed", text, why: "There is no answer then." }
          : { is: "answer", text, answer };
      } catch (error) {
        if (run !== this.#run) return undefined;
        this.#inRoom = undefined;
        const why = error instanceof Error ? error.message : String(error);
        return { is: "failed", text, why };
      }
    }
    return refused;
  }

  async #enter(entered: Entered): Promise<SideRun> {
    const before = this.#inRoom;
    if (before === undefined) {
      const { book, driver } = this.#context;
      const { main, documents } = book;
      const notebook = { main: main.file, documents, entered, units: driver.units };
      const opened = await this.#timed((enough) => this.#room.open(notebook, undefined, enough));
      this.#inRoom = entered;
      return opened;
    }
    this.#inRoom = entered;
    const { changes, reset } = stepsBetween(before, entered);
    return this.#timed((enough) => this.#room.enter(changes, reset, undefined, enough));
  }

  /** Ends once the answer stands; long work is ended when it takes too long. */
  async #timed(
    begin: (enough: (working: readonly CellId[]) => boolean) => Promise<SideRun>,
  ): Promise<SideRun> {
    const answer = this.#asked?.answer;
    const timer = setTimeout(() => this.#room.stopLongWork(), longest);
    try {
      return await begin((working) => answer !== undefined && !working.includes(answer));
    } finally {
      clearTimeout(timer);
    }
  }

  #failed(error: unknown): void {
    this.#inRoom = undefined;
    const why = error instanceof Error ? error.message : String(error);
    this.#set({ is: "failed", why });
  }

  #set(changes: Partial<MattersState>): void {
    this.#state = { ...this.#state, ...changes };
    this.#changed();
  }
}
