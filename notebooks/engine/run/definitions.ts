import type { CompiledCell } from "../compile/index.ts";
import type { CellId, Entered, Host, Surroundings } from "../types/index.ts";
import type { LiveCell } from "./cell.ts";
import { isEntry, readEntry, readTable } from "./entries.ts";
import type { Definition, Graph } from "./graph.ts";
import { beginRun, type Run } from "./long-work.ts";
import { fixedValue, keyOf, makeFunction } from "./made.ts";
import { notingReadings } from "./noting-readings.ts";
import { SameInputs } from "./same-inputs.ts";

export interface DefinitionsContext {
  readonly graph: Graph;
  readonly host: Host;
  entered(cell: CellId): Entered[CellId] | undefined;
  surroundings(): Surroundings;
  starting(cell: CellId): void;
  progress(cell: CellId, words: string, fraction: number | undefined): void;
  calls(more: 1 | -1): void;
  wait(ms: number): Promise<void>;
  /** Which cell's long work goes before another's. */
  order(cell: CellId): number;
  /** Whether cells take each better result of long work as it comes, or the final one only. */
  readonly improving: boolean;
}

/**
 * Puts cells into the graph. A cell has two keys, its formula's and its value's, so that typing into
 * an entry runs the reading of its text but not its formula; a table has one.
 */
export class Definitions {
  readonly #context: DefinitionsContext;

  constructor(context: DefinitionsContext) {
    this.#context = context;
  }

  surroundings(which: keyof Surroundings): void {
    const { graph, host, surroundings } = this.#context;
    const value = {
      units: () => surroundings().units,
      today: () => host.dateOf(surroundings().today),
    };
    graph.define(which, [], value[which]);
  }

  cell(live: LiveCell): void {
    if (isReadTable(live.cell)) {
      this.table(live);
      return;
    }
    this.formula(live);
    this.value(live);
  }

  /** Takes a cell out of the graph. */
  remove({ keys }: LiveCell): void {
    for (const key of Object.values(keys)) this.#context.graph.remove(key);
  }

  table({ cell, keys }: LiveCell): void {
    const { graph, host, entered, starting } = this.#context;
    graph.define(keys.value, [], () => {
      starting(cell.id);
      return readTable(entered(cell.id) ?? cell.csv, cell.name, host);
    });
  }

  formula(live: LiveCell): void {
    const { cell, keys } = live;
    const { graph } = this.#context;
    if (cell.problem !== undefined) {
      graph.define(keys.formula, [], () => {
        throw new Error("not compiled");
      });
      return;
    }
    const changing = cell.inputs.flatMap(({ from }) => keyOf(from) ?? []);
    graph.define(keys.formula, changing, this.#runner(live));
  }

  /** The value of an entry is what its text stands for; of any other cell, what its formula gives. */
  value({ cell, keys }: LiveCell): void {
    const { graph, entered } = this.#context;
    graph.define(keys.value, [keys.formula], (given) => {
      if (!isEntry(given)) return given;
      const typed = entered(cell.id);
      return readEntry(given, typeof typed === "string" ? typed : given.initial, cell.name);
    });
  }

  #runner(live: LiveCell): Definition {
    let made: ReturnType<typeof makeFunction> | undefined;
    const same = new SameInputs<{ readonly run: Run; readonly readings: readonly object[] }>();
    return (...values) => {
      const known = same.recall(values);
      live.reused = known !== undefined;
      if (known) {
        live.readings = known.aside.readings;
        live.run = known.aside.run;
        return known.value;
      }
      this.#context.starting(live.cell.id);
      made ??= makeFunction(live.cell);
      const run = this.#begin(live);
      live.run = run;
      const readings: object[] = [];
      live.readings = readings;
      const given = made(...this.#arguments(live, values, { run, readings }));
      same.remember(values, given, { run, readings });
      return run.stepwise(given);
    };
  }

  #begin({ cell: { id } }: LiveCell): Run {
    const { host, progress, calls, wait, order, improving } = this.#context;
    return beginRun(host, {
      progress: (words, fraction) => progress(id, words, fraction),
      calls,
      wait,
      order: () => order(id),
      improving,
    });
  }

  #arguments(
    live: LiveCell,
    values: readonly unknown[],
    { run, readings }: { readonly run: Run; readonly readings: object[] },
  ): readonly unknown[] {
    const { host } = this.#context;
    let next = 0;
    return live.cell.inputs.map(({ from }) => {
      if (keyOf(from) !== undefined) return values[next++];
      const slow = "library" in from && Object.hasOwn(host.longWork, from.library);
      if (slow) return run.stand(from.library);
      const fixed = fixedValue(from, host);
      return "library" in from ? notingReadings(fixed, readings) : fixed;
    });
  }
}

/** Whether all there is of a cell is a table to be read: it has no formula in the graph. */
export function isReadTable({ what, problem }: CompiledCell): boolean {
  return what === "table" && problem === undefined;
}
