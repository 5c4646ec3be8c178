import { requireRecord } from "../check/index.ts";
import type { ReceiptLine, SizeShown, YardReceipt } from "../cost/index.ts";
import { type Money, requireChoice, type UnitSystem, type Volume } from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import type { BuyingPlan } from "./buying-plan.ts";
import { listedPlan } from "./plan-shape.ts";
import { loadedLength, yardCuts, yardCutWords } from "./yard-cuts.ts";

/** A line of the list to take to the yards. */
export interface BuyingRow {
  /** Empty for what no yard sells. */
  readonly yard: string;
  /** What to ask for, and what the yard is to do with it. */
  readonly what: string;
  /** What one is; null for tax, trips and delivery. */
  readonly size: SizeShown | null;
  readonly count: number | Volume | null;
  /** Of one. */
  readonly price: Money | null;
  readonly sum: Money | "no price";
}

/**
 * What to buy, yard by yard: boards first, the longest before the shorter, then everything else,
 * then tax, delivery and trips, which add up to the plan's total; at the end what no yard sells.
 *
 * @param plan as `planBuying` gives it
 * @param options `system` of lengths that stand in words; default `us`
 * @throws ProblemError for what is no plan
 * @rule sum = count x price, rounded to the minor unit; tax once a yard; the rows add up to the total
 * @source common practice
 * @example
 * const section = readSection("2x12", { path: [] }).value
 * const piece = { name: "A side", bed: "A", part: "side", section, length: times(7, foot), count: 1 }
 * const board = { yard: "Alder", section, length: times(8, foot), price: money(20, "USD") }
 * const boards = { pieces: [piece], stock: [board], kerf: times(0.125, inch), shortfall: times(0, inch) }
 * const yards = [{ yard: "Alder", tax: 0.05, taxOn: "goods", tripCost: money(4, "USD") }]
 * const problem = { boards, needs: [], prices: [], yards, currency: "USD", taxIncluded: false, carriesBulk: false }
 * const solve = async (program) => ({ state: "optimal", values: program.columns.map(() => 1), bound: 1, rowWorth: [] })
 * const plan = await planBuying(problem, { solve })
 * buyingList(plan).map((row) => [row.what, printQuantity(row.sum)]) // => [["2x12","$20.00"],["tax","$1.00"],["trip","$4.00"]]
 */
export function buyingList(
  plan: BuyingPlan,
  options: { readonly system?: UnitSystem } = {},
): readonly BuyingRow[] {
  requireRecord(options, ["options"]);
  const { system = "us" } = options;
  requireChoice(system, ["us", "metric"], ["options", "system"]);
  requireShape(plan, listedPlan, ["plan"]);
  return [
    ...plan.receipts.flatMap((receipt) => receiptRows(plan, receipt, system)),
    ...plan.notSold.map(unsoldRow),
  ];
}

function receiptRows(plan: BuyingPlan, receipt: YardReceipt, system: UnitSystem): BuyingRow[] {
  const { yard, delivery, tax, taxIncluded, trips, tripCost } = receipt;
  const extra = (what: string, count: number | null, sum: Money): BuyingRow[] =>
    sum.si === 0 ? [] : [{ yard, what, size: null, count, price: null, sum }];
  const lines = [...receipt.lines].sort(
    (a, b) =>
      Number(a.board === undefined) - Number(b.board === undefined) ||
      loadedLength(b).si - loadedLength(a).si,
  );
  return [
    ...lines.map((line) => lineRow(plan, { yard, line }, system)),
    ...(taxIncluded ? [] : extra("tax", null, tax)),
    ...extra("delivery of it all", null, delivery),
    ...extra(trips === 1 ? "trip" : "trips", trips, tripCost),
  ];
}

function lineRow(
  plan: BuyingPlan,
  { yard, line }: { readonly yard: string; readonly line: ReceiptLine },
  system: UnitSystem,
): BuyingRow {
  const { item, size, count, price, total } = line;
  const cuts = yardCuts(plan.boards, { yard, line }).map((cut) => yardCutWords(cut, system));
  const unused = plan.boards.buy
    .filter((buy) => buy.yard === yard && buy.unused > 0 && isOf(line, buy))
    .reduce((sum, buy) => sum + buy.unused, 0);
  const spare = unused > 0 ? [`${unused} not sawn, the price asks for so many`] : [];
  return { yard, what: [item, ...cuts, ...spare].join("; "), size, count, price, sum: total };
}

function isOf(line: ReceiptLine, buy: BuyingPlan["boards"]["buy"][number]): boolean {
  const { board, price } = line;
  return (
    board?.section === buy.section.name &&
    board.timber === buy.timber &&
    loadedLength(line).si === buy.length.si &&
    price.si === buy.price.si
  );
}

function unsoldRow({ need }: BuyingPlan["notSold"][number]): BuyingRow {
  const count = need.kind === "volume" ? need.volume : need.kind === "count" ? need.count : null;
  return { yard: "", what: need.item, size: null, count, price: null, sum: "no price" };
}
