import { highsSolver } from "../../../build/highs-solver.ts";
import type { BoardProblem } from "../../../lib/index.ts";
import { type IntegerProgram, inch, type Solve, times } from "../../../lib/index.ts";

let loaded: Promise<Solve> | undefined;

/** The general-purpose solver, loaded once. */
export function solver(): Promise<Solve> {
  loaded ??= highsSolver();
  return loaded;
}

/** The solver, noting every programme it is given. */
export async function notingSolver(): Promise<{ solve: Solve; programs: IntegerProgram[] }> {
  const inner = await solver();
  const programs: IntegerProgram[] = [];
  const solve: Solve = (program, limits) => {
    programs.push(program);
    return inner(program, limits);
  };
  return { solve, programs };
}

/** A problem with the shipped saw: kerf and shortfall 1/8 in. */
export function boardProblem(
  pieces: BoardProblem["pieces"],
  stock: BoardProblem["stock"],
  over: Partial<BoardProblem> = {},
): BoardProblem {
  return { pieces, stock, kerf: times(1 / 8, inch), shortfall: times(1 / 8, inch), ...over };
}
