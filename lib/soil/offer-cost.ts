import type { Path } from "../check/index.ts";
import type { Given } from "../measure/given.ts";
import {
  type Money,
  moneyDimension,
  quantity,
  roundMoney,
  roundUpTo,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import { bagLimits } from "./limits.ts";

/** What a yard asks for a material in one form. */
export interface Offer {
  /** What to call it in the answer, as yard and row; optional. */
  readonly name?: string;
  readonly form: "bag" | "bulk";
  /** The volume the price is for: a bag, or a cubic yard. 0.1 L to 1000 m3. */
  readonly size: Volume;
  /** Price of one `size`, 0 to 1,000,000. */
  readonly price: Money;
  /** Least quantity sold at this price, as a number of sizes or a volume; default none. */
  readonly from?: number | Volume;
  /** Sold in multiples of this, as a number of sizes or a volume; default one size. */
  readonly step?: number | Volume;
  /** Greatest quantity there is, as a number of sizes or a volume; default no limit. */
  readonly limit?: number | Volume;
  /** Cost of bringing the whole order, 0 to 1,000,000; default none. */
  readonly delivery?: Money;
}

/** What a volume costs by one offer. */
export interface OfferCost {
  readonly offer: Offer;
  /** How many sizes to buy: whole bags; for bulk a multiple of the step. */
  readonly count: number;
  readonly volume: Volume;
  readonly leftover: Volume;
  readonly goods: Money;
  readonly delivery: Money;
  /** Goods and delivery. */
  readonly cost: Money;
}

/** An offer in plain numbers: quantities as numbers of sizes. */
export interface PlainOffer {
  readonly offer: Offer;
  readonly sizeM3: number;
  readonly price: number;
  readonly from: number;
  readonly step: number;
  readonly limit: number;
  readonly delivery: number;
}

const none = quantity(0, moneyDimension);
const moneyLimits = { min: none, max: quantity(1e6, moneyDimension) };
const sizesLimits = { min: 0, max: 1e6 };
const stepLimits = { min: 1e-3, max: 1e6 };

/** Checks an offer; problems go to `given`. */
export function plainOffer(given: Given, offer: Offer, path: Path): PlainOffer {
  const row = given.fields(offer, path);
  const sizeM3 = given.si(row.size, "volume", [...path, "size"], bagLimits) || 1;
  const form = given.oneOf(row.form, ["bag", "bulk"], [...path, "form"]);
  const sizes = (key: string, otherwise: number, limits: typeof sizesLimits): number => {
    const value = row[key] ?? undefined;
    if (value === undefined) return otherwise;
    if (typeof value === "number") return given.plain(value, [...path, key], limits);
    return given.si(value, "volume", [...path, key], bagLimits) / sizeM3;
  };
  const step = sizes("step", 1, stepLimits);
  if (form === "bag" && Math.abs(step - Math.round(step)) > 1e-9) {
    given.add({
      code: "contradiction",
      path: [...path, "step"],
      allowed: "whole bags",
      received: `${step} bags`,
      remedy: "Give the step of bags as a whole number, or the form as bulk.",
    });
  }
  return {
    offer,
    sizeM3,
    price: given.si(row.price, "money", [...path, "price"], moneyLimits),
    from: sizes("from", 0, sizesLimits),
    step,
    limit: sizes("limit", Infinity, sizesLimits),
    delivery: given.si(row.delivery ?? none, "money", [...path, "delivery"], moneyLimits),
  };
}

/** How many sizes must be bought to cover a need; none for no need. */
export function sizesFor(needM3: number, offer: PlainOffer): number {
  if (needM3 <= 0) return 0;
  const steps = Math.max(
    roundUpTo(needM3 / offer.sizeM3 / offer.step, 1),
    roundUpTo(offer.from / offer.step, 1),
  );
  return Number((steps * offer.step).toPrecision(12));
}

/** Goods and delivery of so many sizes. */
export function costOf(count: number, offer: PlainOffer, currency: string | undefined) {
  const goods = roundMoney(quantity(offer.price * count, moneyDimension, currency));
  const delivery = roundMoney(quantity(count > 0 ? offer.delivery : 0, moneyDimension, currency));
  return {
    goods,
    delivery,
    cost: roundMoney(quantity(goods.si + delivery.si, moneyDimension, currency)),
  };
}

export function offerCost(
  needM3: number,
  plain: PlainOffer,
  currency: string | undefined,
): OfferCost {
  const count = sizesFor(needM3, plain);
  const volumeM3 = count * plain.sizeM3;
  return {
    offer: plain.offer,
    count,
    volume: quantity(volumeM3, volumeDimension),
    leftover: quantity(Math.max(0, volumeM3 - needM3), volumeDimension),
    ...costOf(count, plain, currency),
  };
}
