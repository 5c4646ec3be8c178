import { expect } from "vitest";
import {
  type BoardPlan,
  type BoardProblem,
  checkCertificate,
  money,
  planBoards,
  validateBoardPlan,
} from "../../lib/index.ts";
import { board, inches, piece } from "../lib/lumber/make.ts";
import { boardProblem, solver } from "../lib/lumber/solver.ts";

export interface CuttingStock {
  /** Length, price, and how many there are where they are limited. */
  readonly stock: readonly (readonly [length: number, price: number, limit?: number])[];
  readonly pieces: readonly (readonly [length: number, count: number])[];
}

/**
 * A cutting-stock example, its lengths taken as so many of a small unit (a 32nd of an inch), no kerf:
 * plans it, checks the plan and its certificate, and gives what it costs and how sure that is.
 */
export async function cutExample(example: CuttingStock): Promise<BoardPlan> {
  const unit = 1 / 32;
  const pieces = example.pieces.map(([length, count], i) =>
    piece(length * unit, count, { bed: `order ${i}`, name: `order ${i}` }),
  );
  const stock = example.stock.map(([length, price, limit]) =>
    board(length * unit, 0, { price: money(price), ...(limit === undefined ? {} : { limit }) }),
  );
  const whole: Partial<BoardProblem> = { kerf: inches(0), shortfall: inches(0) };
  const problem = boardProblem(pieces, stock, whole);
  const plan = await planBoards(problem, { solve: await solver(), seconds: 20 });
  expect(validateBoardPlan(problem, plan)).toEqual([]);
  expect(checkCertificate(plan.certificate)).toEqual([]);
  return plan;
}
