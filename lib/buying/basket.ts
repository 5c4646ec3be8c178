import { centsOf } from "../cost/cents.ts";
import type { PatternUse } from "../cutting/cut-part.ts";
import { boardsUsed, inSteps, planCost } from "../cutting/pattern-cost.ts";
import type { CuttingGroup } from "../lumber/make-groups.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import type { GoodsOffer } from "./goods-offers.ts";
import { deliveryGrains, leastOrderCents, payloadKg, tripGrains, tripsFor } from "./tariff.ts";
import type { YardWay } from "./ways.ts";

/** What is bought where, in plain numbers. */
export interface Basket {
  readonly ways: readonly YardWay[];
  readonly groups: readonly CuttingGroup[];
  /** One for each group. */
  readonly uses: readonly (readonly PatternUse[])[];
  readonly goods: readonly GoodsOffer[];
}

/** What a basket costs and weighs. */
export interface Weighed {
  /** All of it, less what offcuts are worth. */
  readonly grains: number;
  /** Trips to each yard; 0 where nothing is bought or all is brought. */
  readonly trips: readonly number[];
  /** Whether each order that is brought is large enough. */
  readonly isEnough: boolean;
}

/** The yard each kind of board is bought at, by its place among the ways; -1 for kept boards. */
export function yardOfKind(
  problem: BuyingProblem,
  ways: readonly YardWay[],
  kind: CuttingGroup["kinds"][number],
): number {
  const stock = problem.boards.stock[kind.stock[0] ?? 0];
  return ways.findIndex(({ terms }) => terms.yard === stock?.yard);
}

/** What one board of a kind weighs, in kilograms. */
export function kgOfKind(
  problem: BuyingProblem,
  { section }: CuttingGroup,
  kind: CuttingGroup["kinds"][number],
): number {
  const stock = problem.boards.stock[kind.stock[0] ?? 0];
  if (!stock || problem.woodDensity === undefined) return 0;
  return section.thickness.si * section.width.si * stock.length.si * problem.woodDensity.si;
}

/** The price of one board of a kind in minor units, before tax. */
export function centsOfKind(problem: BuyingProblem, kind: CuttingGroup["kinds"][number]): number {
  const stock = problem.boards.stock[kind.stock[0] ?? 0];
  return stock && stock.yard !== null ? centsOf(stock.price) : 0;
}

/** Adds a basket up. */
export function weigh(problem: BuyingProblem, basket: Basket): Weighed {
  const { ways, groups, uses, goods } = basket;
  const kg = ways.map(() => 0);
  const cents = ways.map(() => 0);
  const lines = ways.map(() => 0);
  const add = (at: number, own: { kg: number; cents: number }) => {
    if (at < 0) return;
    kg[at] = (kg[at] ?? 0) + own.kg;
    cents[at] = (cents[at] ?? 0) + own.cents;
    lines[at] = (lines[at] ?? 0) + 1;
  };
  let grains = 0;
  for (const [g, group] of groups.entries()) {
    const own = uses[g] ?? [];
    grains += planCost(group.part, own);
    for (const [k, boards] of boardsUsed(group.part, own).entries()) {
      const kind = group.kinds[k];
      if (!kind || boards === 0) continue;
      const count = inSteps(boards, kind.step);
      const [each, price] = [kgOfKind(problem, group, kind), centsOfKind(problem, kind)];
      add(yardOfKind(problem, ways, kind), { kg: each * count, cents: price * count });
    }
  }
  for (const { at, grains: own, kg: each, purchase } of goods) {
    grains += own;
    add(at, { kg: each, cents: purchase.cents });
  }
  let isEnough = true;
  const trips = ways.map((yardWay, at) => {
    if (lines[at] === 0) return 0;
    if (yardWay.way === "delivered") {
      grains += deliveryGrains(yardWay.terms, problem);
      if ((cents[at] ?? 0) < leastOrderCents(yardWay) - 1e-6) isEnough = false;
      return 0;
    }
    const count = tripsFor(kg[at] ?? 0, payloadKg(yardWay, problem));
    grains += count * tripGrains(yardWay.terms);
    return count;
  });
  return { grains, trips, isEnough };
}
