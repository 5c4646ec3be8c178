import { ProblemError } from "../check/index.ts";
import type { Money } from "../measure/index.ts";
import type { GardenBill } from "./garden-bill.ts";

/**
 * The total of a bill, of all that has a price; what has none is named in the bill's cautions.
 *
 * @param bill as `gardenBill` gives it
 * @throws ProblemError where the boards cannot be had: a section without a price (`unpriced`), a
 * piece longer than every board (`no-fit`), limits too small
 * @rule sum of the receipts
 * @source common practice
 */
export function gardenTotal(bill: GardenBill): Money {
  if (bill.boardProblems.length > 0) throw new ProblemError(bill.boardProblems);
  return bill.total;
}
