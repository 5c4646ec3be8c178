import { requireRecord } from "../check/index.ts";
import { indexPrices, type PriceIndex } from "../cost/price-index.ts";
import { firstFitByHand } from "../cutting/first-fit.ts";
import { assemblePlan } from "../lumber/assemble-plan.ts";
import { certify } from "../lumber/certify.ts";
import { checkTimber } from "../lumber/checks.ts";
import { chooseTimbers } from "../lumber/choose-timber.ts";
import { makeGroups } from "../lumber/make-groups.ts";
import { offersOf } from "../lumber/offers.ts";
import { type Spliced, splicePieces } from "../lumber/splicing.ts";
import type { Money } from "../measure/index.ts";
import { type Basket, weigh } from "./basket.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import { checkBuyingProblem } from "./check-buying-problem.ts";
import { cheapestOffers, type GoodsOffer, goodsOffers } from "./goods-offers.ts";
import { receiptsOf, totalOf } from "./receipts.ts";
import { taxedAt } from "./tariff.ts";
import { allWays, wayAt, type YardWay } from "./ways.ts";

/** What it costs by hand. */
export interface ByHand {
  readonly total: Money;
  /** Where all boards are bought. */
  readonly yard: string;
  /** How many boards are bought. */
  readonly boards: number;
  /** How many needs cannot be had so. */
  readonly notSold: number;
}

interface Tried extends Basket {
  readonly yard: string;
  readonly grains: number;
}

/**
 * What everything costs the way people buy by hand: all boards at one yard, for each section one
 * length, longest piece first on the first board with room, kept boards before new ones; every other
 * need where it costs least. Of all yards, ways and lengths the one that costs least.
 *
 * @param problem as for `planBuying`
 * @param options `timber`, for pieces that name none
 * @returns null where no single yard has all the boards by this rule
 * @throws ProblemError with all problems: bad values by row, `missing` where a timber must be chosen
 * @rule longest piece first, each on the first board with room for it, boards of one length
 * @source common practice
 * @example
 * const section = readSection("2x12", { path: ["section"] }).value
 * const piece = { name: "A-1 side", bed: "A-1", part: "side", section, length: times(5, foot), count: 3 }
 * const board = (ft, price) => ({ yard: "Alder", section, length: times(ft, foot), price: money(price, "USD") })
 * const boards = { pieces: [piece], stock: [board(8, 20), board(16, 41)], kerf: times(0.125, inch), shortfall: times(0, inch) }
 * const yards = [{ yard: "Alder", tax: 0, taxOn: "goods" }]
 * const problem = { boards, needs: [], prices: [], yards, currency: "USD", taxIncluded: false, carriesBulk: false }
 * firstFitBuying(problem).total // => $41.00
 */
export function firstFitBuying(
  problem: BuyingProblem,
  options: { readonly timber?: string } = {},
): ByHand | null {
  requireRecord(options, ["options"]);
  const checks = checkBuyingProblem(problem);
  checkTimber(checks, options.timber, ["timber"]);
  checks.done();
  const timbers = chooseTimbers(problem.boards, checks, options.timber);
  checks.done();
  const joined = splicePieces(problem.boards, timbers, () => true);
  const spliced = { ...problem, boards: joined.problem };
  const index = indexPrices(problem.prices);
  const tries = allWays(problem.yards).flatMap((ways) => tryAt(spliced, joined, { ways, index }));
  const [best] = tries.sort((a, b) => b.goods.length - a.goods.length || a.grains - b.grains);
  return best ? told(spliced, joined, best) : null;
}

/** All boards at each of these yards in turn. */
function tryAt(
  problem: BuyingProblem,
  joined: Spliced,
  given: { readonly ways: readonly YardWay[]; readonly index: PriceIndex },
): Tried[] {
  const { ways } = given;
  const goods: GoodsOffer[] = cheapestOffers(goodsOffers(problem, ways, given.index));
  return ways.flatMap(({ terms: { yard } }): Tried[] => {
    const offers = offersOf(problem.boards, (name) => {
      const own = wayAt(ways, name);
      if (name !== yard || !own) return { open: false, byCar: true, taxed: 1 };
      return { open: true, byCar: own.way === "fetched", taxed: taxedAt(own.terms, problem) };
    });
    const groups = makeGroups(problem.boards, joined.timbers, offers);
    const uses = groups.map((group) => firstFitByHand(group.part));
    if (!uses.every((own) => own !== undefined)) return [];
    const basket = { ways, groups, uses: uses.map((own) => own ?? []), goods };
    const { grains, isEnough } = weigh(problem, basket);
    return isEnough ? [{ ...basket, yard, grains }] : [];
  });
}

function told(problem: BuyingProblem, joined: Spliced, tried: Tried): ByHand {
  const { ways, groups, uses, goods, yard } = tried;
  const boards = assemblePlan(problem.boards, {
    chosen: groups.map((group, g) => ({ group, uses: uses[g] ?? [] })),
    proof: { kind: "optimal" },
    certificate: certify(problem.boards, [], []),
    spliced: joined.spliced,
    remarks: [],
  });
  const receipts = receiptsOf(problem, ways, { boards, goods });
  const total = totalOf(receipts, problem.currency);
  const notSold = problem.needs.length - goods.length;
  return { total, yard, boards: boards.boughtCount, notSold };
}
