import { type Problem, requireRecord } from "../check/index.ts";
import { listed, named, requireShape } from "../measure/shape.ts";
import type { BoardPlan, CutBoard } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import { checkBoardPlan } from "./check-board-plan.ts";
import { checkBoardProblem } from "./check-board-problem.ts";
import { Findings } from "./findings.ts";
import { checkBill, checkOffcuts, checkSupply } from "./validate-bill.ts";
import { checkBoards } from "./validate-boards.ts";
import { checkPieces, checkShortened, checkSpliced } from "./validate-pieces.ts";

const slackM = 1e-7;
const remedy = "The plan breaks its own rules: make it again, and report this.";

/** How the boards come to the garden. */
export interface ValidateBoardPlanOptions {
  /** Yards that bring what is bought there, so that no load length holds. Default: none. */
  readonly delivered?: readonly string[];
}

function checkTotals(findings: Findings, plan: BoardPlan): void {
  const length = (boards: readonly CutBoard[]) =>
    boards.reduce((sum, cut) => sum + cut.length.si, 0);
  const kept = plan.cuts.filter((cut) => cut.yard === null);
  const piecesM = plan.cuts
    .flatMap((cut) => cut.pieces)
    .reduce((sum, piece) => sum + piece.length.si, 0);
  const bought = plan.buy.reduce((sum, { count }) => sum + count, 0);
  const boughtM = plan.buy.reduce((sum, line) => sum + line.count * line.length.si, 0);
  findings.same(bought, plan.boughtCount, ["boughtCount"]);
  findings.same(kept.length, plan.keptCount, ["keptCount"]);
  findings.same(boughtM, plan.boughtLength.si, ["boughtLength"], 1e-6);
  findings.same(length(kept), plan.keptLength.si, ["keptLength"], 1e-6);
  findings.same(piecesM, plan.piecesLength.si, ["piecesLength"], 1e-6);
  const usedM = length(plan.cuts);
  findings.same(usedM > 0 ? piecesM / usedM : 1, plan.yield, ["yield"], 1e-9);
  findings.same(1, plan.yield + plan.waste, ["waste"], 1e-9);
  findings.same(
    plan.cuts.reduce((sum, cut) => sum + cut.cutCount, 0),
    plan.cutCount,
    ["cutCount"],
  );
}

/**
 * Checks a plan against its problem by rules stated afresh, sharing nothing with the planner: each
 * piece made exactly once, at its length or short within the allowance and like pieces of a bed
 * alike; no board over its length, kerf and squaring counted; boards too long for the car cut at the
 * yard, every piece on one part; joints only in pieces that may have them; boards from the stock,
 * within its limits, in its bundles and least numbers; the bill added up again; totals, yield, worth
 * of offcuts and shortened pieces as they are said to be.
 *
 * @param problem what was planned
 * @param plan as `planBoards` gives it, or `boards` of a buying plan
 * @param options `delivered`: the yards that bring, default none
 * @returns all that is wrong; an empty list for a sound plan
 * @throws ProblemError for what is no board problem or no plan at all; what is wrong with a plan is in
 * the list
 * @rule Pieces on a board, and the cuts between them, are no longer than the board.
 * @source common practice
 * @example
 * const none = { pieces: [], stock: [], kerf: millimetre, shortfall: millimetre }
 * const zero = times(0, inch)
 * const certificate = { pieces: [], boards: [], others: [], kerf: millimetre, offcuts: null, floor: money(0) }
 * const plan = { cuts: [], buy: [], cost: money(0), proof: { kind: "optimal" }, boughtCount: 0, keptCount: 0, boughtLength: zero, keptLength: zero, piecesLength: zero, cutCount: 0, yield: 1, waste: 0, shortened: [], spliced: [], offcutWorth: money(0), certificate, remarks: [], cautions: [] }
 * validateBoardPlan(none, plan) // => []
 */
export function validateBoardPlan(
  problem: BoardProblem,
  plan: BoardPlan,
  options: ValidateBoardPlanOptions = {},
): readonly Problem[] {
  checkBoardProblem(problem).done();
  checkBoardPlan(plan).done();
  requireRecord(options, ["options"]);
  const { delivered = [] } = options;
  requireShape(delivered, listed(named), ["delivered"]);
  const findings = new Findings(remedy, slackM);
  checkPieces(findings, problem, plan);
  checkSpliced(findings, problem, plan);
  checkBoards(findings, problem, { plan, delivered: new Set(delivered) });
  checkSupply(findings, problem, plan);
  checkBill(findings, problem, { plan, delivered: new Set(delivered) });
  checkOffcuts(findings, problem, plan);
  checkTotals(findings, plan);
  checkShortened(findings, problem, plan);
  return findings.problems;
}
