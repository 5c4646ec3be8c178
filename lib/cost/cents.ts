import { type Money, minorDigits, moneyDimension, quantity } from "../measure/index.ts";

// Sums of money are worked out in whole minor units (cents), which binary numbers hold exactly.

/** What a sum of money may be. */
export const sumBounds = {
  min: quantity(0, moneyDimension),
  max: quantity(1_000_000_000, moneyDimension),
};

/** A whole number, halves away from zero, judged on the digits people see: 100.49999999999999 is 100.5. */
export function wholeCents(cents: number): number {
  const size = Math.abs(cents);
  const seen = Number.isInteger(size) ? size : Number(size.toPrecision(14));
  return cents < 0 ? -Math.floor(seen + 0.5) + 0 : Math.floor(seen + 0.5);
}

/** Money as minor units, not rounded: 21.405 dollars are 2140.5 cents. */
export function centsOf(money: Money): number {
  return Number((money.si * 10 ** minorDigits(money.currency)).toPrecision(15));
}

/** Money from whole minor units. */
export function moneyFromCents(cents: number, currency: string | undefined): Money {
  return quantity(cents / 10 ** minorDigits(currency), moneyDimension, currency);
}
