import type { Length, Money } from "../measure/index.ts";
import { requireBill } from "./checks.ts";
import type { GardenBill } from "./garden-bill.ts";

/** A line of the list to take to the yard. */
export interface BoardRow {
  readonly yard: string;
  readonly section: string;
  readonly timber: string;
  readonly length: Length;
  readonly count: number;
  readonly price: Money;
  readonly total: Money;
}

/**
 * The boards to buy, by yard.
 *
 * @param bill as `gardenBill` gives it; its boards, spare ones included
 * @rule the lines of boards on the bill, spare ones with them
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const needs = [{ kind: "volume", item: "compost", use: "mulch", volume: times(5, cubicFoot), shares: [] }];
 * const buying = await planGardenBuying({ pieces: [], needs, onHand, yards, prices }, { solve });
 * const bill = gardenBill(buying, []);
 * boardsToBuy(bill) // => []
 */
export function boardsToBuy(bill: GardenBill): readonly BoardRow[] {
  requireBill(bill);
  return bill.receipts.flatMap(({ yard, lines }) =>
    lines.flatMap((line): BoardRow[] => {
      const { board, count, price, total } = line;
      if (board === undefined) return [];
      return [{ yard, ...board, length: line.size as Length, count, price, total }];
    }),
  );
}
