import { requireRecords } from "../check/index.ts";
import { type Money, requireMoney, requireNumber } from "../measure/index.ts";
import { centsOf, moneyFromCents, sumBounds, wholeCents } from "./cents.ts";

/**
 * Shares a sum of money out by weights so that the shares add up to the sum to the minor unit. Each
 * share is rounded down; the minor units left over go to the largest remainders, the first of equal
 * ones. Where all weights are zero, all weigh alike.
 *
 * @param sum what is shared out, 0 to 1,000,000,000; rounded to the minor unit first
 * @param weights one for each share, 0 to 1e15; none gives no share
 * @throws ProblemError where the sum is no money or a weight no number, or one is out of its range
 * @rule share = sum x weight / sum of weights, rounded by the largest remainder
 * @source common practice
 * @example
 * shareOut(money(1, "USD"), [1, 1, 1])[0] // => $0.34
 */
export function shareOut(sum: Money, weights: readonly number[]): Money[] {
  requireMoney(sum, ["sum"], sumBounds);
  if (!Array.isArray(weights)) requireRecords(weights, ["weights"]);
  weights.forEach((weight, index) => {
    requireNumber(weight, ["weights", index + 1], { min: 0, max: 1e15 });
  });
  return shareCents(wholeCents(centsOf(sum)), weights).map((cents) =>
    moneyFromCents(cents, sum.currency),
  );
}

/** The same in whole minor units. */
export function shareCents(cents: number, weights: readonly number[]): number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const exact = weights.map((weight) =>
    total > 0 ? (cents * weight) / total : cents / weights.length,
  );
  const shares = exact.map(Math.floor);
  const left = cents - shares.reduce((sum, share) => sum + share, 0);
  const byRemainder = exact
    // Remainders that differ only by the noise of binary fractions are equal.
    .map((share, index) => ({ index, remainder: Math.round((share - Math.floor(share)) * 1e7) }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  for (const { index } of byRemainder.slice(0, left)) shares[index] = (shares[index] ?? 0) + 1;
  return shares;
}
