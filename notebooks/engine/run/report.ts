import type { CellError, CellId, CellState, Entered, Host, Units } from "../types/index.ts";
import type { LiveCell } from "./cell.ts";
import { entryProblem, showEntry } from "./entries.ts";
import { documentError, thrownError, waitsError } from "./failures.ts";
import { leftOutBy, leftOutOf } from "./left-out.ts";
import { cautionsOf, problemsOf, remarksOf } from "./show/asides.ts";
import { show } from "./show/show.ts";
import { refusedTables } from "./strict.ts";
import { sumOf } from "./sum.ts";

type Texts = Pick<Map<CellId, Entered[CellId]>, "get">;

/** Makes of live cells what is told of them, and leaves out what has been told before. */
export class Reporter {
  readonly #cells: ReadonlyMap<CellId, LiveCell>;
  readonly #host: Host;
  readonly #strict: boolean;

  constructor(cells: ReadonlyMap<CellId, LiveCell>, host: Host, strict: boolean) {
    this.#cells = cells;
    this.#host = host;
    this.#strict = strict;
  }

  /** The states that are new since they were last asked for, in the program's order. */
  changes(entered: Texts, units: Units): readonly CellState[] {
    const around = this.#around(entered, units);
    const states: CellState[] = [];
    for (const live of this.#cells.values()) {
      const leftOut = leftOutOf(around.leftOut.get(live.cell.id));
      // A value may stay what it was while more rows are left out of what it rests on.
      if (!live.changed && !this.#strict && leftOut === live.leftOut) continue;
      live.leftOut = leftOut;
      live.changed = false;
      const state = this.#safeState(live, around);
      const text = state === undefined ? "" : JSON.stringify(state);
      if (state === undefined || text === live.sent) continue;
      live.sent = text;
      states.push(state);
    }
    return states;
  }

  /** The state of one cell as it is now; undefined where nothing is known of it yet. */
  state(id: CellId, entered: Texts, units: Units): CellState | undefined {
    const live = this.#cells.get(id);
    return live === undefined ? undefined : this.#safeState(live, this.#around(entered, units));
  }

  /** A value made to do harm when it is looked at does it to its own cell only. */
  #safeState(live: LiveCell, around: Around): CellState | undefined {
    try {
      return this.#stateOf(live, around);
    } catch (error) {
      const { cell } = live;
      const failure = thrownError(error, cell, this.#host);
      return { id: cell.id, error: failure, cautions: [], problems: [] };
    }
  }

  #around(entered: Texts, units: Units): Around {
    const refused = this.#strict
      ? refusedTables(this.#cells, this.#host)
      : new Map<CellId, CellError>();
    return { entered, units, refused, leftOut: leftOutBy(this.#cells) };
  }

  #stateOf(live: LiveCell, around: Around): CellState | undefined {
    const { cell } = live;
    const error = this.#errorOf(live, around.refused);
    if (error === undefined && live.status !== "value") return undefined;
    const values = [live.value, ...live.readings];
    const problems = error === undefined ? problemsOf(values, this.#host) : error.problems;
    const remarks = remarksOf(values);
    const known = {
      id: cell.id,
      cautions: cautionsOf(live.value),
      problems,
      ...(remarks.length > 0 ? { remarks } : {}),
    };
    const entry = this.#entryOf(live, around);
    if (error !== undefined) return { ...known, error, ...(entry ? { entry } : {}) };
    if (entry !== undefined) return { ...known, entry };
    const sum = sumOf(live, this.#cells, this.#host, around.units);
    const leftOut = leftOutOf(around.leftOut.get(cell.id));
    return {
      ...known,
      shown: show(live.value, this.#host, around.units, { brief: cell.hints.quiet }),
      ...(sum === undefined ? {} : { sum }),
      ...(live.run?.cutShort === true ? { cutShort: true } : {}),
      ...(leftOut === undefined ? {} : { leftOut }),
    };
  }

  #entryOf(live: LiveCell, { entered, units }: Around) {
    const { entry, cell } = live;
    if (entry === undefined) return undefined;
    const typed = entered.get(cell.id);
    const text = typeof typed === "string" ? typed : String(entry.initial);
    const problem = live.status === "failed" ? entryProblem(live.failure, this.#host) : undefined;
    return showEntry({ entry, text, value: live.value, problem }, this.#host, units);
  }

  #errorOf(live: LiveCell, refused: ReadonlyMap<CellId, CellError>): CellError | undefined {
    const { cell } = live;
    const compiled = documentError(cell) ?? refused.get(cell.id);
    if (compiled !== undefined) return compiled;
    if (live.status === "failed") return thrownError(live.failure, cell, this.#host);
    const roots = this.#rootsOf(live, refused);
    if (roots.length > 0) return waitsError(cell, roots);
    // Only what is handed in from outside can fail without a cell of its own.
    return live.status === "waits" ? waitsError(cell, [{ name: "today" }]) : undefined;
  }

  /** The cells with errors of their own that keep this one waiting, in the program's order. */
  #rootsOf(live: LiveCell, refused: ReadonlyMap<CellId, CellError>) {
    if (live.status !== "waits" && refused.size === 0) return [];
    const roots = new Map<CellId, string>();
    const seen = new Set<CellId>();
    const waiting = [...live.cell.takes];
    for (let id = waiting.shift(); id !== undefined; id = waiting.shift()) {
      const taken = this.#cells.get(id);
      if (taken === undefined || seen.has(id)) continue;
      seen.add(id);
      const own = taken.cell.problem !== undefined || refused.has(id) || taken.status === "failed";
      if (own) roots.set(id, taken.cell.name);
      else waiting.push(...taken.cell.takes);
    }
    return [...roots.values()].map((name) => ({ name }));
  }
}

interface Around {
  readonly entered: Texts;
  readonly units: Units;
  readonly refused: ReadonlyMap<CellId, CellError>;
  readonly leftOut: ReturnType<typeof leftOutBy>;
}
