import type { Problem } from "../check/index.ts";
import type { BoardPlan } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";

export function validateBoardPlan(_problem: BoardProblem, _plan: BoardPlan): readonly Problem[] {
  throw new Error("in the making");
}
