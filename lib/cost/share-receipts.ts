import { requireRecords } from "../check/index.ts";
import { currencyCodes, type Money, requireChoice, requireText } from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import { centsOf, moneyFromCents } from "./cents.ts";
import type { ReceiptLine, YardReceipt } from "./receipt.ts";
import { sharedReceipts } from "./shapes.ts";
import { shareCents } from "./share-out.ts";

/** What falls to one bed. */
export interface BedCost {
  /** Empty for what belongs to no bed in particular. */
  readonly bed: string;
  readonly money: Money;
}

/**
 * Shares receipts out to beds by what each takes of every line; tax, delivery and trips go with the
 * goods of their yard. The shares add up to the receipts to the minor unit.
 *
 * @param receipts of one currency
 * @param beds names in the order wanted; others that occur follow
 * @param currency of receipts, for none
 * @throws ProblemError for receipts or names that are none, a currency that is not known
 * @rule share = receipt x the bed's part of its goods, summed over yards, rounded by the largest remainder
 * @source common practice
 * @example
 * const terms = { yard: "Alder", tax: 0, taxOn: "goods" };
 * const shares = [{ bed: "A", share: 2 }, { bed: "B", share: 1 }];
 * const soil = { item: "soil", use: "fill", size: 1, count: 1, price: money(10, "USD"), shares };
 * shareReceipts([yardReceipt([soil], terms)], ["A", "B"]).map((each) => each.money.si) // => [6.67,3.33]
 */
export function shareReceipts(
  receipts: readonly YardReceipt[],
  beds: readonly string[],
  currency?: string,
): readonly BedCost[] {
  if (!Array.isArray(beds)) requireRecords(beds, ["beds"]);
  beds.forEach((bed, at) => {
    requireText(bed, ["beds", at + 1]);
  });
  requireShape(receipts, sharedReceipts, ["receipts"]);
  if (currency !== undefined) requireChoice(currency, currencyCodes, ["currency"]);
  const code = currency ?? receipts[0]?.total.currency;
  const weights = new Map<string, number>(beds.map((bed) => [bed, 0]));
  for (const receipt of receipts) {
    const ofBeds = bedWeights(receipt.lines);
    const whole = [...ofBeds.values()].reduce((sum, weight) => sum + weight, 0);
    const cents = centsOf(receipt.total);
    if (whole === 0) weights.set("", (weights.get("") ?? 0) + cents);
    for (const [bed, weight] of ofBeds) {
      if (whole > 0) weights.set(bed, (weights.get(bed) ?? 0) + (cents * weight) / whole);
    }
  }
  const total = receipts.reduce((sum, receipt) => sum + centsOf(receipt.total), 0);
  const names = [...weights.keys()];
  if (total === 0) return names.map((bed) => ({ bed, money: moneyFromCents(0, code) }));
  return shareCents(total, [...weights.values()]).map((cents, place) => ({
    bed: names[place] ?? "",
    money: moneyFromCents(cents, code),
  }));
}

function bedWeights(lines: readonly ReceiptLine[]): Map<string, number> {
  const weights = new Map<string, number>();
  for (const { shares = [], total } of lines) {
    const whole = shares.reduce((sum, { share }) => sum + share, 0);
    if (whole === 0) continue;
    const perShare = total.si / whole;
    for (const { bed, share } of shares) {
      weights.set(bed, (weights.get(bed) ?? 0) + perShare * share);
    }
  }
  return weights;
}
