import type { Remark } from "../check/index.ts";
import type { NotSold, YardReceipt } from "../cost/index.ts";
import type { PriceIndex } from "../cost/price-index.ts";
import type { Worth } from "../cutting/cut-model.ts";
import { grainsPerMinor } from "../cutting/cut-part.ts";
import { patternRest } from "../cutting/pattern-cost.ts";
import { assemblePlan } from "../lumber/assemble-plan.ts";
import type { SplicedPiece } from "../lumber/board-plan.ts";
import { certify, grainsToMoney } from "../lumber/certify.ts";
import type { BoardPlan, Certificate, PlanProof } from "../lumber/index.ts";
import type { CuttingGroup } from "../lumber/make-groups.ts";
import { minorDigits, printQuantity } from "../measure/index.ts";
import type { BuyingPlan, BuyingProof, YardsFloor } from "./buying-plan.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import { receiptsOf, totalOf } from "./receipts.ts";
import type { Offered } from "./solve-ways.ts";
import { leastOrderCents } from "./tariff.ts";
import type { YardWay } from "./ways.ts";

/** What was found out about a choice of yards and ways. */
export interface FloorFound {
  readonly ways: readonly YardWay[];
  /** What its values alone give. */
  readonly floor: number;
  /** The values, by group; null where the boards were not looked at. */
  readonly groups: readonly GroupFloor[] | null;
  readonly others: readonly { readonly what: string; readonly grains: number }[];
  /** The floor that the whole search gave. */
  readonly proven: number;
}

interface GroupFloor {
  readonly group: CuttingGroup;
  readonly worth: Worth;
  /** The group's place in the values. */
  readonly part: number;
}

/** All that a plan is told from. */
export interface Found {
  readonly best: Offered;
  /** No plan costs less, in grains. */
  readonly floor: number;
  readonly floors: readonly FloorFound[];
  readonly spliced: readonly SplicedPiece[];
  readonly remarks: readonly Remark[];
  readonly index: PriceIndex;
  readonly difference: number;
}

/**
 * How far the plan is above the floor, as its boards are laid: where a piece that patterns give too
 * often is left off a board that was to leave an offcut, that offcut is not there.
 */
function aboveFloor(problem: BuyingProblem, { best, floor }: Found, boards: BoardPlan): number {
  const { groups, uses } = best.basket;
  let planned = 0;
  for (const [g, { part }] of groups.entries()) {
    for (const { pattern, boards: n } of uses[g] ?? []) planned += n * patternRest(part, pattern);
  }
  const perUnit = grainsPerMinor * 10 ** minorDigits(problem.currency);
  const missing = Math.max(0, planned - boards.offcutWorth.si * perUnit);
  return Math.max(0, best.weighed.grains + missing - floor);
}

function proofOf(problem: BuyingProblem, above: number, total: number): BuyingProof {
  if (above < grainsPerMinor) return { kind: "cheapest", words: "No cheaper plan exists" };
  const money = grainsToMoney(problem.currency)(Math.ceil(above / grainsPerMinor) * grainsPerMinor);
  const share = total > 0 ? Math.min(1, money.si / total) : 1;
  const percent = Number((100 * share).toPrecision(2));
  const words = `At most ${printQuantity(money)} (${percent} %) above the cheapest possible`;
  return { kind: "within", words, above: money, share };
}

function certificateOf(problem: BuyingProblem, found: FloorFound): Certificate {
  const groups = (found.groups ?? []).map(({ group, worth, part }) => ({
    group,
    values: worth.values[part] ?? [],
    prices: worth.prices[part] ?? [],
    fillings: worth.fillings[part] ?? [],
  }));
  return certify(problem.boards, groups, found.others);
}

function floorsOf(problem: BuyingProblem, { best, floors, difference }: Found): YardsFloor[] {
  const money = grainsToMoney(problem.currency);
  return floors.map((each) => {
    const yards = each.ways.map(({ terms, way }) => ({ yard: terms.yard, way }));
    const dismissed = each.groups === null || each.floor > best.weighed.grains - difference;
    if (dismissed) return { yards, floor: money(each.floor), dismissed, certificate: null };
    const certificate = certificateOf(problem, each);
    return { yards, floor: certificate.floor, dismissed, certificate };
  });
}

function notSold(problem: BuyingProblem, { best, index }: Found): NotSold[] {
  const sold = new Set(best.basket.goods.map(({ need }) => need));
  return problem.needs
    .filter((need) => !sold.has(need))
    .map((need) => {
      const lines = index.linesFor(need);
      if (lines.length === 0) return { need, why: "no price" };
      const covering = lines.filter(({ yard }) => index.purchase(need, yard, true) !== undefined);
      if (covering.length === 0) return { need, why: "not enough" };
      const brought = problem.yards.some(
        ({ yard, delivery }) =>
          delivery !== undefined && covering.some((line) => line.yard === yard),
      );
      return { need, why: brought ? "under the least order" : "not brought" };
    });
}

const boardsFirst = (receipt: YardReceipt) =>
  receipt.lines.some((line) => line.form === "board") ? 0 : 1;

/** The plan in quantities: boards, receipts, proof, floors. */
export function describePlan(problem: BuyingProblem, found: Found): BuyingPlan {
  const { basket } = found.best;
  const own = found.floors.find((each) => each.ways === basket.ways);
  const empty = { ways: basket.ways, floor: 0, groups: [], others: [], proven: 0 };
  const certificate = certificateOf(problem, own?.groups ? own : empty);
  const money = grainsToMoney(problem.currency);
  const laid = assemblePlan(problem.boards, {
    chosen: basket.groups.map((group, g) => ({ group, uses: basket.uses[g] ?? [] })),
    proof: { kind: "optimal" },
    certificate,
    spliced: found.spliced,
    remarks: found.remarks,
    fillers: new Set(
      basket.ways.filter((own) => leastOrderCents(own) > 0).map(({ terms }) => terms.yard),
    ),
  });
  const above = aboveFloor(problem, found, laid);
  const proof: PlanProof =
    above < grainsPerMinor ? { kind: "optimal" } : { kind: "bound", above: money(above) };
  const boards: BoardPlan = { ...laid, proof };
  const receipts = receiptsOf(problem, basket.ways, { boards, goods: basket.goods }).sort(
    (a, b) => boardsFirst(a) - boardsFirst(b),
  );
  const total = totalOf(receipts, problem.currency);
  const used = new Set(receipts.map(({ yard }) => yard));
  return {
    boards,
    receipts,
    ways: basket.ways
      .filter(({ terms }) => used.has(terms.yard))
      .map(({ terms, way }) => ({ yard: terms.yard, way })),
    notSold: notSold(problem, found),
    total,
    proof: proofOf(problem, above, total.si),
    floors: floorsOf(problem, found),
  };
}
