import { ProblemError } from "../check/index.ts";
import type { Money } from "../measure/index.ts";
import { requireBill } from "./checks.ts";
import type { GardenBill } from "./garden-bill.ts";

/**
 * The total of a bill, of all that has a price; what has none is named in the bill's cautions.
 *
 * @param bill as `gardenBill` gives it
 * @throws ProblemError where the boards cannot be had: a section without a price (`unpriced`), a
 * piece longer than every board (`no-fit`), limits too small
 * @rule to pay = all lines of the bill, each rounded to the cent, + tax + delivery + trips
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const needs = [{ kind: "volume", item: "compost", use: "mulch", volume: times(5, cubicFoot), shares: [] }];
 * const buying = await planGardenBuying({ pieces: [], needs, onHand, yards, prices }, { solve });
 * const bill = gardenBill(buying, []);
 * gardenTotal(bill) // => $20.22
 */
export function gardenTotal(bill: GardenBill): Money {
  requireBill(bill);
  if (bill.boardProblems.length > 0) throw new ProblemError(bill.boardProblems);
  return bill.total;
}
