import type { BoardPlan } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { Solve, StopSignal } from "./solver.ts";

export interface PlanOptions {
  /** The solver of integer programmes to use. */
  readonly solve: Solve;
  /** Timber for pieces that name none, where the yard has several of their section. */
  readonly timber?: string;
  /** Seconds the solver may take for each section. Default 10. */
  readonly seconds?: number;
  readonly progress?: (words: string, fraction?: number) => void;
  readonly signal?: StopSignal;
}

export async function planBoards(
  _problem: BoardProblem,
  _options: PlanOptions,
): Promise<BoardPlan> {
  throw new Error("in the making");
}

/** The plan at one yard: its boards and the kept ones only. */
export async function planBoardsAtYard(
  problem: BoardProblem,
  options: PlanOptions & { readonly yard: string },
): Promise<BoardPlan> {
  const { yard, ...rest } = options;
  const stock = problem.stock.filter((board) => board.yard === null || board.yard === yard);
  return planBoards({ ...problem, stock }, rest);
}
