import {
  type BuyingPlan,
  type BuyingProblem,
  checkCertificate,
  type Problem,
  ProblemError,
  planBuying,
  sentence,
  validateBuyingPlan,
  type Way,
} from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { type Least, leastBuying } from "./whole-formulation.ts";

// A plan of the planner held against the least cost that the whole formulation gives.

const hundredThousandthsPerUnit = 1e7;

/** What a plan costs before taxes are rounded, in 1/100,000 of the minor unit, offcuts at their worth. */
export function planCost(problem: BuyingProblem, plan: BuyingPlan): number {
  const receipts = plan.receipts.reduce((sum, receipt) => {
    const terms = problem.yards.find(({ yard }) => yard === receipt.yard);
    const rate = problem.taxIncluded ? 0 : (terms?.tax ?? 0);
    const taxesDelivery = terms?.taxOn === "goods and delivery";
    const goods = receipt.goods.si * (1 + rate);
    const delivery = receipt.delivery.si * (1 + (taxesDelivery ? rate : 0));
    return sum + goods + delivery + receipt.tripCost.si;
  }, 0);
  return Math.round((receipts - plan.boards.offcutWorth.si) * hundredThousandthsPerUnit);
}

/** The problem with its over-long pieces joined of parts as a plan does: which joints is a choice before. */
function joined(problem: BuyingProblem, plan: BuyingPlan): BuyingProblem {
  const pieces = problem.boards.pieces.flatMap((piece) => {
    const whole = plan.boards.spliced.find(
      ({ name, bed }) => name === piece.name && bed === piece.bed,
    );
    return whole === undefined ? [piece] : whole.parts.map((length) => ({ ...piece, length }));
  });
  return { ...problem, boards: { ...problem.boards, pieces } };
}

/**
 * The least that all can cost. Where offcuts are worth something and pieces may be cut short, what
 * an offcut is worth depends on whether its board's pieces are: the least is between two bounds.
 */
async function leastOf(problem: BuyingProblem): Promise<{ from: Least; to: Least } | undefined> {
  const to = await leastBuying(problem);
  if (to === undefined) return undefined;
  const { offcuts, shortfall } = problem.boards;
  if (offcuts === undefined || shortfall.si === 0) return { from: to, to };
  return { from: (await leastBuying(problem, { offcutsOf: "leastU" })) ?? to, to };
}

async function planned(problem: BuyingProblem): Promise<BuyingPlan | readonly Problem[]> {
  try {
    return await planBuying(problem, { solve: await solver() });
  } catch (error) {
    if (error instanceof ProblemError) return error.problems;
    throw error;
  }
}

const isPlan = (found: BuyingPlan | readonly Problem[]): found is BuyingPlan => "boards" in found;

// Two hundredths of a cent: what the solver's own numbers may be off.
const hair = 2000;

/** Everything in which the planner and the whole formulation disagree about a problem; empty where they agree. */
export async function disagreements(problem: BuyingProblem): Promise<string[]> {
  const found = await planned(problem);
  if (!isPlan(found)) {
    const least = await leastBuying(problem);
    if (least === undefined) return [];
    return [`refused (${found.map(sentence).join("; ")}), costs ${least.hundredThousandths}`];
  }
  const whole = joined(problem, found);
  const least = await leastOf(whole);
  if (least === undefined) return ["a plan where there is none"];
  const said: string[] = [];
  const cost = planCost(problem, found);
  const { from, to } = least;
  if (found.notSold.length !== to.notSold) {
    said.push(`${found.notSold.length} not sold, not ${to.notSold}`);
  } else {
    if (cost < from.hundredThousandths - hair) {
      said.push(`costs ${cost}, less than the least, ${from.hundredThousandths}`);
    }
    if (cost > to.hundredThousandths + hair) {
      said.push(`costs ${cost}, more than the least, ${to.hundredThousandths}`);
    }
  }
  if (found.proof.kind !== "cheapest") said.push(found.proof.words);
  said.push(...validateBuyingPlan(problem, found).map(sentence));
  said.push(...floorsTooHigh(found, least.from));
  return said;
}

const nameOf = (ways: readonly (readonly [string, Way])[]): string =>
  ways
    .map((each) => each.join(" "))
    .sort()
    .join(", ");

/** Floors above what buying at their yards, in their ways, costs at least. */
function floorsTooHigh(plan: BuyingPlan, least: Least): string[] {
  const said: string[] = [];
  for (const { yards, floor, certificate } of plan.floors) {
    const name = nameOf(yards.map(({ yard, way }) => [yard, way]));
    const problems = certificate === null ? [] : checkCertificate(certificate).map(sentence);
    said.push(...problems.map((words) => `${name}: ${words}`));
    const isBest = name === nameOf([...least.ways]);
    const floorGrains = floor.si * hundredThousandthsPerUnit;
    if (isBest && floorGrains > least.hundredThousandths + hair) {
      said.push(`${name}: a floor of ${floorGrains} above ${least.hundredThousandths}`);
    }
  }
  return said;
}

/** Every choice of yards, each gone to or bringing, by name. */
function choices({ yards }: BuyingProblem): ReadonlyMap<string, Way>[] {
  return yards.reduce<ReadonlyMap<string, Way>[]>(
    (found, { yard, delivery }) =>
      found.flatMap((ways) => [
        ways,
        new Map([...ways, [yard, "fetched"] as const]),
        ...(delivery === undefined ? [] : [new Map([...ways, [yard, "delivered"] as const])]),
      ]),
    [new Map()],
  );
}

/** Choices of yards and ways that have no floor, or one above what buying there costs at least. */
export async function floorsAboveTheirLeast(problem: BuyingProblem): Promise<string[]> {
  const plan = await planned(problem);
  if (!isPlan(plan)) return [];
  const whole = joined(problem, plan);
  const floors = new Map(
    plan.floors.map(({ yards, floor }) => [
      nameOf(yards.map(({ yard, way }) => [yard, way])),
      floor.si * hundredThousandthsPerUnit,
    ]),
  );
  const said: string[] = [];
  for (const ways of choices(problem)) {
    const name = nameOf([...ways]);
    const least = await leastBuying(whole, { ways, offcutsOf: "leastU" });
    if (least === undefined || least.notSold > plan.notSold.length) continue;
    const floor = floors.get(name);
    if (floor === undefined) said.push(`${name}: no floor`);
    else if (floor > least.hundredThousandths + hair) {
      said.push(`${name}: a floor of ${floor} above ${least.hundredThousandths}`);
    }
  }
  return said;
}
