import { requireRecord } from "../check/index.ts";
import { type Money, requireChoice, requireMoney, requireNumber } from "../measure/index.ts";
import { centsOf, moneyFromCents, sumBounds, wholeCents } from "./cents.ts";

/** How a price is taxed. */
export interface SalesTaxOptions {
  /** Whether the sum has the tax in it already, as is usual with euros. Default: false. */
  readonly included?: boolean;
}

/**
 * The tax on a sum of money, rounded once to the currency's minor unit, a half away from zero. With
 * `included` it is the part of the sum that is tax.
 *
 * @param sum what is taxed, 0 to 1,000,000,000
 * @param rate the tax as a share, 0 to 1: 0.06875 for 6.875 %
 * @param options `included`: whether the sum has the tax in it; default false
 * @throws ProblemError where the sum is no money or the rate no number, or one is out of its range
 * @rule tax = sum x rate; included tax = sum x rate / (1 + rate); up from half a minor unit
 * @source ssuta
 * @example
 * salesTax(money(100, "USD"), 0.06875) // => $6.88
 * salesTax(money(119, "EUR"), 0.19, { included: true }) // => €19.00
 */
export function salesTax(sum: Money, rate: number, options: SalesTaxOptions = {}): Money {
  requireRecord(options, ["options"]);
  const { included = false } = options;
  requireChoice(included, [true, false], ["options", "included"]);
  requireMoney(sum, ["sum"], sumBounds);
  requireNumber(rate, ["rate"], { min: 0, max: 1 });
  const share = included ? rate / (1 + rate) : rate;
  return moneyFromCents(wholeCents(centsOf(sum) * share), sum.currency);
}
