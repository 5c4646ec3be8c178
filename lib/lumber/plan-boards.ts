import {
  type Caution,
  type Problem,
  ProblemError,
  requireRecord,
  requireRecords,
} from "../check/index.ts";
import { requireText } from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import { nailsInOldBoards, neverBurn, sawingTreatedWood } from "../safety/index.ts";
import type { BoardPlan } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { GroupPlan } from "./bounded-plan.ts";
import { checkBoardProblem } from "./check-board-problem.ts";
import { checkTimber } from "./checks.ts";
import { chooseTimbers } from "./choose-timber.ts";
import { cutBoards, type SourcedBoard } from "./cut-boards.ts";
import { groupName, noPlanProblem, piecesThatFitNothing } from "./explain-failure.ts";
import { costOf } from "./first-fit.ts";
import { layOut } from "./lay-out.ts";
import { makeGroups, type PricedGroup } from "./make-groups.ts";
import { buyLines, inCurrencyOf, labelled, shortenedPieces, totalLength } from "./plan-totals.ts";
import { shortenings } from "./shortening.ts";
import { solveGroup } from "./solve-group.ts";
import type { Solve, StopSignal } from "./solver.ts";
import { unitsToLength, unitsUp } from "./whole-units.ts";

/** The solver, and what else a board plan may need. */
export interface PlanOptions {
  /** The solver of integer programmes to use. */
  readonly solve: Solve;
  /** Timber for pieces that name none, where their section comes in several. */
  readonly timber?: string;
  /** Seconds the solver may take for each section, from 0.1 to 600. Default 10. */
  readonly seconds?: number;
  readonly progress?: (words: string, fraction?: number) => void;
  readonly signal?: StopSignal;
  /** Plans already made, by their problem: hand in the same map again and nothing is planned twice. */
  readonly remembered?: Map<string, GroupPlan>;
}

function stopIfAsked(signal: StopSignal | undefined): void {
  if (!signal?.aborted) return;
  const stop = new Error("The plan was stopped before it was ready.");
  stop.name = "AbortError";
  throw stop;
}

interface SolvedGroup {
  readonly group: PricedGroup;
  readonly plan: GroupPlan;
}

/** The part of a group that its plan depends on, as text. */
function groupKey(group: PricedGroup, seconds: number): string {
  const classes = group.classes.map((each) => [each.sizeU, each.leastU, each.demand, each.mitred]);
  const kinds = group.kinds.map((kind) => [
    kind.capacityU,
    kind.cost,
    String(kind.supply),
    kind.kept,
  ]);
  return JSON.stringify([classes, kinds, seconds]);
}

async function solveGroups(
  groups: readonly PricedGroup[],
  problem: BoardProblem,
  options: PlanOptions,
): Promise<SolvedGroup[]> {
  const { solve, seconds = 10, signal, progress, remembered = new Map() } = options;
  const problems = groups.flatMap((group) => piecesThatFitNothing(problem, group));
  const solved: SolvedGroup[] = [];
  for (const [i, group] of groups.entries()) {
    stopIfAsked(signal);
    progress?.(`Planning ${groupName(group)} (${i + 1} of ${groups.length})`, i / groups.length);
    const longestU = Math.max(0, ...group.kinds.map((kind) => kind.capacityU));
    if (group.classes.some((each) => each.leastU > longestU)) {
      if (problems.length === 0 || group.kinds.length === 0)
        problems.push(noPlanProblem(problem, group));
      continue;
    }
    const key = groupKey(group, seconds);
    const stopped = () => signal?.aborted === true;
    const plan = remembered.get(key) ?? (await solveGroup(group, { solve, seconds, stopped }));
    stopIfAsked(signal);
    if (!plan) problems.push(noPlanProblem(problem, group));
    else {
      remembered.set(key, plan);
      solved.push({ group, plan });
    }
  }
  if (problems.length > 0) throw new ProblemError(problems);
  return solved;
}

function cautionsOf(boards: readonly SourcedBoard[]): Caution[] {
  const treated = new Set(
    boards
      .filter(({ cut }) => /\btreated\b/.test(cut.timber) && !/\buntreated\b/.test(cut.timber))
      .map(({ cut }) => `${cut.section.name} ${cut.timber}`),
  );
  const kept = boards.filter(({ cut }) => cut.yard === null).length;
  const cautions: Caution[] = [];
  if (treated.size > 0) {
    const because = [...treated].join(", ");
    cautions.push(sawingTreatedWood({ because }), neverBurn({ because }));
  }
  if (kept > 0) cautions.push(nailsInOldBoards({ because: `kept boards to cut: ${kept}` }));
  return cautions;
}

/**
 * Says which boards to buy and how to cut each, at the least cost: boards bought from the stock
 * given, kept boards (yard `null`) free. Each section and timber is planned for itself. All cutting
 * patterns are listed and the solver chooses among them, which proves the plan cheapest; with very
 * many different lengths it gives a plan and how far at most it is above the cheapest.
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
  const groups = makeGroups(problem, timbers);
  const solved = await solveGroups(groups, problem, options);
  const counts = problem.pieces.map((piece) => piece.count);
  return assemble(problem, { solved, counts, remarks: timbers.remarks });
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

function assemble(
  problem: BoardProblem,
  parts: {
    solved: readonly SolvedGroup[];
    counts: readonly number[];
    remarks: BoardPlan["remarks"];
  },
): BoardPlan {
  const boards: SourcedBoard[] = [];
  const shortened: [number, BoardPlan["boughtLength"]][] = [];
  let above = 0;
  for (const { group, plan } of parts.solved) {
    const laid = layOut(group, plan.uses, parts.counts);
    const short = shortenings(group, laid);
    for (const [entry, units] of short) {
      const asked = problem.pieces[entry]?.length.si ?? 0;
      shortened.push([entry, unitsToLength(unitsUp(asked) - units)]);
    }
    boards.push(...cutBoards(problem, group, { boards: laid, short }));
    const cost = costOf(
      group,
      laid.map(({ kind }) => ({ pattern: { kind, counts: [], tight: false }, boards: 1 })),
    );
    above += Math.max(0, cost - plan.floor) * group.coin;
  }
  const cuts = labelled(boards);
  const buy = buyLines(problem, boards);
  const bought = cuts.filter((cut) => cut.yard !== null);
  const kept = cuts.filter((cut) => cut.yard === null);
  const used = totalLength(cuts.map((cut) => cut.length));
  const pieces = totalLength(cuts.flatMap((cut) => cut.pieces.map((piece) => piece.length)));
  const share = used.si > 0 ? pieces.si / used.si : 1;
  return {
    cuts,
    buy,
    cost: inCurrencyOf(
      problem,
      buy.reduce((sum, line) => sum + line.sum.si, 0),
    ),
    proof:
      above > 1e-9 ? { kind: "bound", above: inCurrencyOf(problem, above) } : { kind: "optimal" },
    boughtCount: bought.length,
    keptCount: kept.length,
    boughtLength: totalLength(bought.map((cut) => cut.length)),
    keptLength: totalLength(kept.map((cut) => cut.length)),
    piecesLength: pieces,
    cutCount: cuts.reduce((sum, cut) => sum + cut.cutCount, 0),
    yield: share,
    waste: 1 - share,
    shortened: shortenedPieces(problem, new Map(shortened)),
    remarks: parts.remarks,
    cautions: cautionsOf(boards),
  };
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
