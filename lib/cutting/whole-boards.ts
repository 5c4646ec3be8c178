import { aloneModel } from "./cut-model.ts";
import { type CutPart, grainsPerMinor, isPlain, leastSizes, type Pattern } from "./cut-part.ts";
import { type FillingTable, fillingTable } from "./filling-table.ts";
import type { Pacer } from "./pacer.ts";
import { type Relaxed, relax } from "./relaxed.ts";
import type { IntegerProgram, Solve } from "./solver.ts";

/** How many boards of each kind, and what they cost. */
export interface BoardNumbers {
  /** One for each kind. */
  readonly numbers: readonly number[];
  /** No plan costs less, in grains. */
  readonly floor: number;
  /** The relaxed plan that cuts all pieces from these boards; undefined where it was not reached. */
  readonly relaxed: Relaxed | undefined;
}

/** A row that every plan keeps: what its boards can hold at these values is at least what is needed. */
interface Row {
  readonly holds: readonly number[];
  readonly needed: number;
}

/** The row that follows from any values of the pieces. */
function rowOf(part: CutPart, table: FillingTable, values: readonly number[]): Row {
  const filled = table.fill(values);
  const holds = part.kinds.map((_, k) => filled.worthOf(k));
  const needed = part.classes.reduce((sum, each, i) => sum + each.demand * (values[i] ?? 0), 0);
  return { holds, needed };
}

function programOf(part: CutPart, rows: readonly Row[], boards: number): IntegerProgram {
  return {
    whole: true,
    rows: rows.map(({ needed }) => ({
      // A hair less, so that rounding never takes a plan away.
      least: needed > 0 ? 1000 * (1 - 1e-8) : 0,
      most: Number.POSITIVE_INFINITY,
    })),
    columns: part.kinds.map((kind, k) => ({
      cost: kind.cost / grainsPerMinor,
      most: Math.min(kind.supply, boards),
      rows: rows.map((_, r) => r),
      amounts: rows.map(({ holds, needed }) =>
        needed > 0 ? (1000 * (holds[k] ?? 0)) / needed : 0,
      ),
    })),
  };
}

/** Whether the numbers of boards can be told apart from how they are cut. */
export const countsBoards = (part: CutPart): boolean =>
  part.rests === null && part.kinds.every(isPlain);

/**
 * The least cost of whole boards that could hold all pieces if they could be cut in any parts. What
 * boards hold is told by rows that follow from values of the pieces; where the boards chosen do not
 * hold all, the values that show it give a new row. After Benders (1962).
 */
export async function wholeBoards(
  part: CutPart,
  root: Relaxed,
  options: {
    readonly solve: Solve;
    readonly pacer: Pacer;
    /** It ends where the floor comes to this, in grains. */
    readonly costAtMost: number;
    readonly rounds: number;
  },
): Promise<BoardNumbers> {
  const { solve, pacer, costAtMost, rounds } = options;
  const table = fillingTable(part, leastSizes(part));
  const boards = part.classes.reduce((sum, each) => sum + each.demand, 0);
  const rows: Row[] = [
    rowOf(part, table, root.worth.values[0] ?? []),
    rowOf(part, table, leastSizes(part)),
  ];
  let floor = root.worth.floor;
  let numbers: readonly number[] = [];
  let start: readonly Pattern[] = root.patterns[0] ?? [];
  for (let round = 0; round < rounds; round++) {
    const solution = await solve(programOf(part, rows, boards), { seconds: 2, gap: 0.001 });
    if (solution.values.length === 0) break;
    floor = Math.max(floor, Math.ceil(solution.bound - 0.01) * grainsPerMinor);
    numbers = solution.values.map(Math.round);
    if (floor >= costAtMost) return { numbers, floor, relaxed: undefined };
    const chosen = {
      ...part,
      kinds: part.kinds.map((kind, k) => ({ ...kind, supply: numbers[k] ?? 0 })),
    };
    const relaxed = await relax(aloneModel(chosen), { pacer, start: [start] });
    if (relaxed.feasible) return { numbers, floor, relaxed };
    start = relaxed.patterns[0] ?? [];
    rows.push(rowOf(part, table, relaxed.worth.values[0] ?? []));
  }
  return { numbers, floor, relaxed: undefined };
}
