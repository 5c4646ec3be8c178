import { boughtOf } from "../cost/bought-of.ts";
import type { Need } from "../cost/index.ts";
import type { PriceIndex } from "../cost/price-index.ts";
import type { Purchase } from "../cost/purchase.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import { grainsOf, taxedAt } from "./tariff.ts";
import type { YardWay } from "./ways.ts";

/** One need, bought at one yard. */
export interface GoodsOffer {
  readonly need: Need;
  /** Place among the yards bought at. */
  readonly at: number;
  readonly purchase: Purchase;
  /** With tax. */
  readonly grains: number;
  readonly kg: number;
}

const carries = ({ way }: YardWay, { carriesBulk }: BuyingProblem) =>
  way === "delivered" || carriesBulk;

/** What each need costs at the yards bought at; no offers where none of them has it. */
export function goodsOffers(
  problem: BuyingProblem,
  ways: readonly YardWay[],
  index: PriceIndex,
): readonly (readonly GoodsOffer[])[] {
  return problem.needs.map((need) =>
    ways.flatMap((yardWay, at): GoodsOffer[] => {
      const { terms } = yardWay;
      const purchase = index.purchase(need, terms.yard, carries(yardWay, problem));
      if (purchase === undefined) return [];
      const grains = grainsOf(purchase.cents * taxedAt(terms, problem));
      const kg = purchase.parts.reduce(
        (sum, part) => sum + (boughtOf(part, need).mass?.si ?? 0),
        0,
      );
      return [{ need, at, purchase, grains, kg }];
    }),
  );
}

/** The cheapest offer of each need. */
export function cheapestOffers(offers: readonly (readonly GoodsOffer[])[]): GoodsOffer[] {
  return offers.flatMap((own) => {
    const [best] = [...own].sort((a, b) => a.grains - b.grains || a.at - b.at);
    return best ? [best] : [];
  });
}
