import { placeInWords } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import { type Money, quantity, type Volume, volumeDimension } from "../measure/index.ts";
import { breakEvenM3 } from "./break-even.ts";
import { volumeLimits } from "./limits.ts";
import {
  type Offer,
  type OfferCost,
  offerCost,
  type PlainOffer,
  plainOffer,
} from "./offer-cost.ts";

/** What to buy of a material, and how far the other offers are from it. */
export interface BagsOrBulk {
  /** The cheapest offer with its count and cost; null where no offer has enough. */
  readonly chosen: OfferCost | null;
  /** All offers that have enough, cheapest first. */
  readonly compared: readonly OfferCost[];
  /** Offers whose limit is below the need. */
  readonly short: readonly Offer[];
  /**
   * Above this need the cheapest bulk offer never costs more than the cheapest bag offer; null
   * where bags stay cheaper, or where one of the two is not offered.
   */
  readonly breakEven: Volume | null;
}

/**
 * Compares offers for a volume, in bags and in bulk, and chooses the cheapest. Of equal costs it
 * takes the one with less left over, then bags before bulk, then the one given first. Each
 * offer is taken alone: to share a volume between offers, ask for each share.
 *
 * @param volume needed, 0 to 1,000,000 m3; none buys nothing.
 * @param offers one or more: `form` `bag` or `bulk`, `size` 0.1 L to 1000 m3, `price` of a size 0 to
 * 1,000,000, and optional `from`, `step`, `limit` (numbers of sizes or volumes), `delivery`.
 * @throws ProblemError naming every field that is missing, of another kind or out of range; where
 * bags are sold in parts (`contradiction`); where the offers have two currencies (`mixed-currency`).
 * @rule count = need / size rounded up to the step, at least the least order; cost = price x count, rounded to the minor unit, + delivery
 * @source common practice
 * @example
 * const offers = [
 *   { form: "bag", size: cubicFoot, price: money(4, "USD") },
 *   { form: "bulk", size: cubicYard, price: money(40, "USD"), delivery: money(50, "USD") },
 * ];
 * const { chosen, breakEven } = bagsOrBulk(times(54, cubicFoot), offers);
 * chosen.count // => 2
 * chosen.cost // => $130.00
 * breakEven // => 1.19 cu yd
 */
export function bagsOrBulk(volume: Volume, offers: readonly Offer[]): BagsOrBulk {
  const given = new Given();
  const needM3 = given.si(volume, "volume", ["volume"], volumeLimits);
  const plain = given
    .list(offers, ["offers"], 1)
    .map((offer, at) => plainOffer(given, offer as Offer, ["offers", at + 1]));
  const currency = oneCurrency(given, offers);
  given.done();

  const costs = plain.map((offer) => ({ offer, cost: offerCost(needM3, offer, currency) }));
  const enough = costs.filter(({ offer, cost }) => cost.count <= offer.limit * (1 + 1e-9));
  const compared = enough.sort((a, b) => byCost(a.cost, b.cost));
  const cheapest = (form: Offer["form"]): PlainOffer | undefined =>
    compared.find(({ offer }) => offer.offer.form === form)?.offer;
  const bag = cheapest("bag");
  const bulk = cheapest("bulk");
  const meet = bag && bulk ? breakEvenM3(bag, bulk, currency) : null;
  return {
    chosen: compared[0]?.cost ?? null,
    compared: compared.map(({ cost }) => cost),
    short: costs.filter((one) => !enough.includes(one)).map(({ offer }) => offer.offer),
    breakEven: meet === null ? null : quantity(meet, volumeDimension),
  };
}

function byCost(a: OfferCost, b: OfferCost): number {
  const form = (cost: OfferCost): number => (cost.offer.form === "bag" ? 0 : 1);
  // Costs are whole minor units; leftovers that differ by the noise of fractions are equal.
  const leftover = a.leftover.si - b.leftover.si;
  return a.cost.si - b.cost.si || (Math.abs(leftover) < 1e-9 ? 0 : leftover) || form(a) - form(b);
}

function oneCurrency(given: Given, offers: readonly Offer[]): string | undefined {
  if (!given.clean) return undefined;
  const named = offers.flatMap((offer, at) =>
    [["price", offer.price] as const, ["delivery", offer.delivery] as const].flatMap(
      ([key, money]: readonly [string, Money | undefined]) =>
        money?.currency === undefined
          ? []
          : [{ path: ["offers", at + 1, key], of: money.currency }],
    ),
  );
  const first = named[0];
  const other = named.find(({ of }) => of !== first?.of);
  if (first && other) {
    given.add({
      code: "mixed-currency",
      path: other.path,
      allowed: `${first.of}, the currency of ${placeInWords(first.path)}`,
      received: other.of,
      remedy: "Give all prices of one comparison in one currency.",
      also: [first.path],
    });
  }
  return first?.of;
}
