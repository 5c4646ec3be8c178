import type { ReceiptLine, SizeShown, YardReceipt } from "../cost/index.ts";
import type { Money, Volume } from "../measure/index.ts";
import { requireBill } from "./checks.ts";
import type { GardenBill } from "./garden-bill.ts";

/** A line of the bill as a table shows it. */
export interface BillRow {
  /** Empty for what no yard has a price for. */
  readonly yard: string;
  readonly item: string;
  readonly use: string;
  /** What one is; null for tax, delivery and trips. */
  readonly size: SizeShown | null;
  readonly count: number | Volume | null;
  /** Of one size. */
  readonly price: Money | null;
  /** `no price` where there is none. */
  readonly total: Money | "no price";
}

/**
 * The bill as rows of a table: for each yard its goods, delivery, tax and trips, then what has no
 * price. With prices that include tax, the tax is not a row of its own.
 *
 * @param bill as `gardenBill` gives it
 * @rule count x price, each line rounded to the cent; then delivery, tax worked out once, and trips
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const needs = [{ kind: "volume", item: "compost", use: "mulch", volume: times(5, cubicFoot), shares: [] }];
 * const buying = await planGardenBuying({ pieces: [], needs, onHand, yards, prices }, { solve });
 * const bill = gardenBill(buying, []);
 * billRows(bill).map((row) => row.item) // => ["compost","tax","trips"]
 */
export function billRows(bill: GardenBill): readonly BillRow[] {
  requireBill(bill);
  return [...bill.receipts.flatMap(receiptRows), ...bill.notSold.map(unsoldRow)];
}

function receiptRows(receipt: YardReceipt): BillRow[] {
  const { yard, lines, delivery, tax, taxIncluded, trips, tripCost } = receipt;
  const extra = (item: string, count: number | null, total: Money): BillRow[] =>
    total.si === 0 ? [] : [{ yard, item, use: "", size: null, count, price: null, total }];
  return [
    ...lines.map((line) => lineRow(yard, line)),
    ...extra("delivery", null, delivery),
    ...(taxIncluded ? [] : extra("tax", null, tax)),
    ...extra("trips", trips, tripCost),
  ];
}

function lineRow(yard: string, { item, use, size, count, price, total }: ReceiptLine): BillRow {
  return { yard, item, use, size, count, price, total };
}

function unsoldRow({ need }: GardenBill["notSold"][number]): BillRow {
  const count = need.kind === "volume" ? need.volume : need.kind === "count" ? need.count : null;
  const { item, use } = need;
  return { yard: "", item, use, size: null, count, price: null, total: "no price" };
}
