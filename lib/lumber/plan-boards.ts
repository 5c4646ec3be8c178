import { type Problem, ProblemError, requireRecord, requireRecords } from "../check/index.ts";
import { breakTies } from "../cutting/break-ties.ts";
import { longestU } from "../cutting/cut-part.ts";
import { Pacer, type StopSignal } from "../cutting/pacer.ts";
import type { PartPlan } from "../cutting/solve-part.ts";
import type { Solve } from "../cutting/solver.ts";
import { solveWithBreaks } from "../cutting/with-breaks.ts";
import { requireText } from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import { assemblePlan } from "./assemble-plan.ts";
import type { BoardPlan, PlanProof } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import { certify, grainsToMoney } from "./certify.ts";
import { checkBoardProblem } from "./check-board-problem.ts";
import { checkTimber } from "./checks.ts";
import { chooseTimbers } from "./choose-timber.ts";
import { groupName, noPlanProblem, piecesThatFitNothing } from "./explain-failure.ts";
import { type CuttingGroup, currencyOf, makeGroups } from "./make-groups.ts";
import { offersOf, plainCarriage } from "./offers.ts";
import { splicePieces } from "./splicing.ts";
import { tooLongToLoad } from "./too-long-to-load.ts";

/** The solver, and what else a board plan may need. */
export interface PlanOptions {
  /** The solver of integer programmes to use. */
  readonly solve: Solve;
  /** Timber for pieces that name none, where their section comes in several. */
  readonly timber?: string;
  /** Seconds the solver may take in one go, from 0.1 to 600. Default 10. */
  readonly seconds?: number;
  readonly progress?: (words: string, fraction?: number) => void;
  readonly signal?: StopSignal;
  /** Gives whoever waits a turn, some fifty times a second. Default: never. */
  readonly pause?: () => Promise<void>;
  /** Plans already made, by their problem: hand in the same map again and nothing is planned twice. */
  readonly remembered?: Map<string, PartPlan>;
}

interface SolvedGroup {
  readonly group: CuttingGroup;
  readonly plan: PartPlan;
}

/** The part of a group that its plan depends on, as text. */
export function groupKey({ part }: CuttingGroup, seconds: number): string {
  const classes = part.classes.map((each) => [each.leastU, each.fullU, each.demand]);
  const kinds = part.kinds.map((kind) => [
    ...[kind.capacityU, kind.partsU, kind.cost, String(kind.supply)],
    ...[kind.from, kind.least, kind.step, kind.bought],
  ]);
  return JSON.stringify([classes, kinds, part.kerfU, part.rests, seconds]);
}

async function solveGroups(
  groups: readonly CuttingGroup[],
  problem: BoardProblem,
  options: PlanOptions,
): Promise<SolvedGroup[]> {
  const { solve, seconds = 10, signal, pause, progress, remembered = new Map() } = options;
  const pacer = new Pacer({ signal, pause });
  const problems = groups.flatMap((group) => piecesThatFitNothing(problem, group));
  const solved: SolvedGroup[] = [];
  for (const [i, group] of groups.entries()) {
    await pacer.spend(1);
    progress?.(`Planning ${groupName(group)} (${i + 1} of ${groups.length})`, i / groups.length);
    const longest = Math.max(0, ...group.kinds.map(longestU));
    if (group.classes.some((each) => each.leastU > longest)) {
      if (problems.length === 0 || group.kinds.length === 0)
        problems.push(noPlanProblem(problem, group));
      continue;
    }
    const key = groupKey(group, seconds);
    const plan = remembered.get(key) ?? (await planGroup(group, { solve, seconds, pacer }));
    if (!plan) problems.push(noPlanProblem(problem, group));
    else {
      remembered.set(key, plan);
      solved.push({ group, plan });
    }
  }
  if (problems.length > 0) throw new ProblemError(problems);
  return solved;
}

async function planGroup(
  { part }: CuttingGroup,
  options: { readonly solve: Solve; readonly seconds: number; readonly pacer: Pacer },
): Promise<PartPlan | undefined> {
  const plan = await solveWithBreaks(part, options);
  return plan && breakTies(part, plan, options);
}

/**
 * Says which boards to buy and how to cut each, at the least cost: boards bought from the stock
 * given, kept boards (yard `null`) free. Each section and timber is planned for itself. The plan says
 * that none is cheaper where that is proven, else how far at most it is above the cheapest.
 *
 * Kerf: n pieces lie on a board when their lengths and n - 1 cuts do. A piece is cut short, by
 * `shortfall` at most, only in a plan that costs less than any plan with whole pieces; like pieces of
 * one bed are then cut alike, and no more is taken than their boards need.
 *
 * @param problem pieces (lengths up to 100 ft), stock, kerf (0 to 1/2 in), shortfall (0 to 1 in)
 * @param options the solver, and what else the plan may need
 * @throws ProblemError with all problems: bad values by row, `no-fit` for a piece longer than every
 * board, `unpriced` for a section without a price, `contradiction` where limits are too small,
 * `missing` where a timber must be chosen. An error named `AbortError` where it was stopped.
 * @rule Least sum of prices over all ways to cut; pieces and kerf rounded up, boards down, to 1/320 mm.
 * @source gilmore-gomory-1961, common practice
 * @example
 * const section = readSection("2x12", { path: ["section"] }).value
 * const piece = { name: "A-1 side", bed: "A-1", part: "side", section, length: times(7, foot), count: 1 }
 * const board = { yard: "North", section, length: times(8, foot), price: money(23.5, "USD") }
 * const problem = { pieces: [piece], stock: [board], kerf: times(0.125, inch), shortfall: times(0, inch) }
 * const solve = async (program) => ({ state: "optimal", values: program.columns.map(() => 1), bound: 1, rowWorth: [] })
 * const plan = await planBoards(problem, { solve })
 * plan.cuts.map((cut) => cut.offcut) // => ["11 7/8 in"]
 */
export async function planBoards(problem: BoardProblem, options: PlanOptions): Promise<BoardPlan> {
  requireRecord(options, ["options"]);
  const { seconds = 10 } = options;
  const checks = checkBoardProblem(problem);
  checkTimber(checks, options.timber, ["timber"]);
  checks
    .unless(typeof options.solve === "function", noSolver(options.solve))
    .number(seconds, ["seconds"], { min: 0.1, max: 600 })
    .done();
  const timbers = chooseTimbers(problem, checks, options.timber);
  checks.done();
  const joined = splicePieces(problem, timbers);
  const offers = offersOf(joined.problem, plainCarriage);
  const groups = makeGroups(joined.problem, joined.timbers, offers);
  const solved = await solveGroups(groups, joined.problem, options);
  const worths = solved.map(({ group, plan: { worth } }) => ({
    group,
    values: worth.values[0] ?? [],
    prices: worth.prices[0] ?? [],
    fillings: worth.fillings[0] ?? [],
  }));
  return assemblePlan(joined.problem, {
    chosen: solved.map(({ group, plan: { uses } }) => ({ group, uses })),
    proof: proofOf(problem, solved),
    certificate: certify(joined.problem, worths, []),
    spliced: joined.spliced,
    remarks: [...timbers.remarks, ...tooLongToLoad(problem)],
  });
}

function noSolver(solve: unknown): Problem {
  return {
    code: solve === undefined || solve === null ? "missing" : "unreadable",
    path: ["solve"],
    allowed: "a solver of integer programmes, as a function",
    received: receivedText(solve ?? undefined),
    remedy: "Hand in the solver that the workbook or the command line has.",
  };
}

function proofOf(problem: BoardProblem, solved: readonly SolvedGroup[]): PlanProof {
  const above = solved.reduce((sum, { plan }) => sum + Math.max(0, plan.cost - plan.floor), 0);
  if (above < 1) return { kind: "optimal" };
  return { kind: "bound", above: grainsToMoney(currencyOf(problem))(above) };
}

/**
 * The least-cost plan with the boards of one yard, and the kept ones.
 *
 * @param options as of `planBoards`, and the yard's name
 * @throws ProblemError as `planBoards` does
 * @rule Least sum of prices over the boards of one yard, with the kept ones free.
 * @source common practice
 * @example
 * const section = readSection("2x12", { path: ["section"] }).value
 * const piece = { name: "A-1 side", bed: "A-1", part: "side", section, length: times(7, foot), count: 1 }
 * const board = { yard: "North", section, length: times(8, foot), price: money(23.5, "USD") }
 * const problem = { pieces: [piece], stock: [board], kerf: times(0.125, inch), shortfall: times(0, inch) }
 * const solve = async (program) => ({ state: "optimal", values: program.columns.map(() => 1), bound: 1, rowWorth: [] })
 * const plan = await planBoardsAtYard(problem, { solve, yard: "North" })
 * plan.cost // => $23.50
 */
export async function planBoardsAtYard(
  problem: BoardProblem,
  options: PlanOptions & { readonly yard: string },
): Promise<BoardPlan> {
  requireRecord(problem, ["problem"]);
  requireRecords(problem.stock, ["stock"]);
  requireRecord(options, ["options"]);
  const { yard, ...rest } = options;
  requireText(yard, ["yard"]);
  const stock = problem.stock.filter((board) => board.yard === null || board.yard === yard);
  return planBoards({ ...problem, stock }, rest);
}
