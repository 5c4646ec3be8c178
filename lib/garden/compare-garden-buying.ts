import { type BuyingComparison, compareBuying } from "../buying/index.ts";
import { requireRecord } from "../check/index.ts";
import { type GardenBuyingOptions, splitOptions } from "./buying-choices.ts";
import type { GardenNeed } from "./garden-problem.ts";
import { planGardenBuying } from "./plan-garden-buying.ts";

/**
 * What other choices of buying would cost for a garden: the cheapest yards where a main yard is
 * chosen, each single yard, sawing by first fit as by hand, without the boards kept, with one spare
 * board of each kind. All are without the spare boards chosen, and for the beds that the plan is for.
 *
 * @param need as for `planGardenBuying`
 * @param options as for `planGardenBuying`
 * @throws ProblemError as `planGardenBuying` does. An error named `AbortError` where it was stopped
 * @rule more = total of the choice - total of the plan
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10\nBirch,compost,2 cu ft,5", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4\nBirch,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const needs = [{ kind: "volume", item: "compost", use: "mulch", volume: times(5, cubicFoot), shares: [] }];
 * const rows = await compareGardenBuying({ pieces: [], needs, onHand, yards, prices }, { solve });
 * rows.map((row) => row.choice) // => ["this plan","all at Alder","all at Birch"]
 * rows[1].more // => $0.32
 */
export async function compareGardenBuying(
  need: GardenNeed,
  options: GardenBuyingOptions & {
    readonly improved?: (rows: readonly BuyingComparison[]) => void;
  },
): Promise<readonly BuyingComparison[]> {
  requireRecord(options, ["options"]);
  const { improved, ...rest } = options;
  const { problem, yard } = await planGardenBuying(need, rest);
  const { planning } = splitOptions(rest);
  return compareBuying(problem, {
    ...planning,
    ...(yard === null ? {} : { yard }),
    ...(improved && { improved }),
  });
}
