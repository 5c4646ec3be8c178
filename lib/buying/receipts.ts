import { boughtOf } from "../cost/bought-of.ts";
import { centsOf, moneyFromCents } from "../cost/cents.ts";
import { type Bought, type YardReceipt, yardReceipt } from "../cost/index.ts";
import type { BoardPlan } from "../lumber/index.ts";
import type { Money } from "../measure/index.ts";
import { boardLines } from "./board-lines.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import type { GoodsOffer } from "./goods-offers.ts";
import type { YardWay } from "./ways.ts";

/** The receipts of a plan: at each yard the boards, then everything else. */
export function receiptsOf(
  problem: BuyingProblem,
  ways: readonly YardWay[],
  bought: { readonly boards: BoardPlan; readonly goods: readonly GoodsOffer[] },
): YardReceipt[] {
  const { taxIncluded, currency, carPayload, woodDensity } = problem;
  const options = { taxIncluded, currency, ...(carPayload === undefined ? {} : { carPayload }) };
  const boards = boardLines(bought.boards, woodDensity);
  return ways.flatMap(({ terms, way }, at): YardReceipt[] => {
    const delivered = way === "delivered";
    const own = boards
      .filter(({ yard }) => yard === terms.yard)
      .map(({ yard: _, ...line }): Bought => ({ ...line, delivered }));
    const goods = bought.goods
      .filter((offer) => offer.at === at)
      .flatMap(({ purchase, need }) =>
        purchase.parts.map((part): Bought => ({ ...boughtOf(part, need), delivered })),
      );
    const lines = [...own, ...goods];
    return lines.length === 0 ? [] : [yardReceipt(lines, terms, options)];
  });
}

/** Sum of receipts, exact to the minor unit. */
export function totalOf(receipts: readonly YardReceipt[], currency: string): Money {
  const cents = receipts.reduce((sum, { total }) => sum + centsOf(total), 0);
  return moneyFromCents(cents, currency);
}
