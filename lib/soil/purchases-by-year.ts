import { Given } from "../measure/given.ts";
import { type Money, quantity, type Volume, volumeDimension } from "../measure/index.ts";
import { type BagsOrBulk, bagsOrBulk } from "./bags-or-bulk.ts";
import { volumeLimits } from "./limits.ts";
import type { Offer, OfferCost } from "./offer-cost.ts";

/** What one year takes of a material. */
export interface YearNeed {
  /** As it is told: "2026", or "3". */
  readonly year: string;
  /** Loose, 0 to 1,000,000 m3. */
  readonly volume: Volume;
}

/** What the own heap gives. */
export interface PurchasesOptions {
  /** Finished compost each year, 0 to 1,000,000 m3, used before any is bought; default none. */
  readonly heap?: Volume;
}

/** What is bought in a year. */
export interface YearPurchase {
  readonly year: string;
  readonly fromHeap: Volume;
  readonly toBuy: Volume;
  /** The cheapest offer with its count; null where nothing is bought, or no offer has enough. */
  readonly bought: OfferCost | null;
  readonly cost: Money | null;
}

/**
 * What is bought year by year of a material, in bags or in bulk, whichever is cheaper for that year's
 * volume, once the own heap has given what it has. Prices are today's.
 *
 * @param needs none or more: `year`, `volume` 0 to 1,000,000 m3.
 * @param offers as for `bagsOrBulk`; none where nothing has a price.
 * @param options `heap`, finished compost each year, default none.
 * @throws ProblemError where a field is missing, of another kind or out of range.
 * @rule to buy = volume - heap, not below none; the cheapest offer for it
 * @source common practice
 * @example
 * const bags = { form: "bag", size: cubicFoot, price: money(4, "USD") };
 * const [first] = purchasesByYear([{ year: "2026", volume: times(10, cubicFoot) }], [bags], { heap: times(4, cubicFoot) });
 * first.cost // => $24.00
 */
export function purchasesByYear(
  needs: readonly YearNeed[],
  offers: readonly Offer[],
  options: PurchasesOptions = {},
): readonly YearPurchase[] {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const heap = chosen.heap ?? quantity(0, volumeDimension);
  const heapM3 = given.si(heap, "volume", ["heap"], volumeLimits);
  const list = given.list(offers, ["offers"]) as readonly Offer[];
  const rows = given.list(needs, ["needs"]).map((need, at) => {
    const path = ["needs", at + 1];
    const row = given.fields(need, path);
    return {
      year: given.name(row.year, [...path, "year"]),
      m3: given.si(row.volume, "volume", [...path, "volume"], volumeLimits),
    };
  });
  given.done();
  const offered = (volume: Volume): BagsOrBulk | null =>
    list.length === 0 || volume.si === 0 ? null : bagsOrBulk(volume, list);
  return rows.map(({ year, m3 }) => {
    const toBuy = quantity(Math.max(0, m3 - heapM3), volumeDimension);
    const bought = offered(toBuy)?.chosen ?? null;
    return {
      year,
      fromHeap: quantity(Math.min(m3, heapM3), volumeDimension),
      toBuy,
      bought,
      cost: bought?.cost ?? null,
    };
  });
}
