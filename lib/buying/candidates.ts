import type { PriceIndex } from "../cost/price-index.ts";
import { longestU } from "../cutting/cut-part.ts";
import type { ChosenTimbers } from "../lumber/choose-timber.ts";
import { type CuttingGroup, makeGroups } from "../lumber/make-groups.ts";
import { offersOf } from "../lumber/offers.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import { cheapestOffers, type GoodsOffer, goodsOffers } from "./goods-offers.ts";
import { deliveryGrains, leastOrderCents, payloadKg, taxedAt, tripGrains } from "./tariff.ts";
import { allWays, wayAt, type YardWay } from "./ways.ts";

/** A choice of yards and ways, with what is known before boards are planned. */
export interface Candidate {
  readonly ways: readonly YardWay[];
  readonly offers: readonly (readonly GoodsOffer[])[];
  readonly goods: readonly GoodsOffer[];
  readonly unsold: number;
  /** Goods, one trip or one delivery for each yard, in grains. */
  readonly fixed: number;
}

/** All choices, those that leave least unsold first, then the cheapest without boards. */
export function candidatesOf(problem: BuyingProblem, index: PriceIndex): Candidate[] {
  const open = allWays(problem.yards).map((ways): Candidate => {
    const offers = goodsOffers(problem, ways, index);
    const goods = cheapestOffers(offers);
    const fixed = ways.reduce(
      (sum, { terms, way }) =>
        sum + (way === "fetched" ? tripGrains(terms) : deliveryGrains(terms, problem)),
      goods.reduce((sum, each) => sum + each.grains, 0),
    );
    return { ways, offers, goods, fixed, unsold: offers.length - goods.length };
  });
  return open.sort((a, b) => a.unsold - b.unsold || a.fixed - b.fixed);
}

/** Pieces and boards with these yards in these ways. */
export function groupsAt(
  problem: BuyingProblem,
  timbers: ChosenTimbers,
  ways: readonly YardWay[],
): CuttingGroup[] {
  const { boards } = problem;
  const offers = offersOf(boards, (yard) => {
    const own = wayAt(ways, yard);
    if (!own) return { open: false, byCar: true, taxed: 1 };
    return { open: true, byCar: own.way === "fetched", taxed: taxedAt(own.terms, problem) };
  });
  // A longer board weighs more, and another yard's car carries it; a dearer one makes a larger order.
  const freely = ways.every(
    (own) => !Number.isFinite(payloadKg(own, problem)) && leastOrderCents(own) === 0,
  );
  return makeGroups(boards, timbers, offers, freely);
}

/** Every yard open in its freest way: what does not fit here fits nowhere, and no plan costs less. */
export function groupsEverywhere(problem: BuyingProblem, timbers: ChosenTimbers): CuttingGroup[] {
  const ways = problem.yards.map((terms): YardWay => {
    return { terms, way: terms.delivery === undefined ? "fetched" : "delivered" };
  });
  return groupsAt(problem, timbers, ways);
}

export function holdsAll({ classes, kinds }: CuttingGroup): boolean {
  const longest = Math.max(0, ...kinds.map(longestU));
  return classes.every((each) => each.leastU <= longest);
}

/** Whether neither weights nor least orders can make a difference. */
export const tripsCostNothing = (problem: BuyingProblem, ways: readonly YardWay[]): boolean =>
  ways.every((own) => own.way === "fetched" && !Number.isFinite(payloadKg(own, problem)));

/** The parts of a candidate's floor besides its boards, in words. */
export function fixedParts(
  problem: BuyingProblem,
  { ways, goods }: Candidate,
): { readonly what: string; readonly grains: number }[] {
  const bought = goods.map(({ need, at, grains }) => ({
    what: `${need.item} at ${ways[at]?.terms.yard}`,
    grains,
  }));
  const had = ways.map(({ terms, way }) =>
    way === "fetched"
      ? { what: `trips to ${terms.yard}: 1`, grains: tripGrains(terms) }
      : { what: `delivery by ${terms.yard}`, grains: deliveryGrains(terms, problem) },
  );
  return [...bought, ...had];
}
