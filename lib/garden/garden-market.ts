import type { Problem, Remark } from "../check/index.ts";
import type { PriceLine, YardTerms } from "../cost/index.ts";
import { type Money, moneyDimension, quantity } from "../measure/index.ts";
import { gardenCurrency, type MoneyTables } from "./garden-currency.ts";

/** What can be bought where, in one currency. */
export interface GardenMarket {
  readonly currency: string;
  readonly prices: readonly PriceLine[];
  readonly yards: readonly YardTerms[];
  readonly problems: readonly Problem[];
  readonly remarks: readonly Remark[];
}

/**
 * Puts prices and yards together: every sum in the garden's currency, yards by one spelling. A price
 * at a yard that is not in the table of yards is left out, with its problem; where that table is
 * empty, the yards are those that have prices, without tax and trip cost.
 */
export function gardenMarket(tables: MoneyTables, fallback: string): GardenMarket {
  const currency = gardenCurrency(tables, fallback);
  const of = (money: Money): Money => quantity(money.si, moneyDimension, currency);
  const maybe = (money: Money | undefined) => (money === undefined ? undefined : of(money));
  const listed = tables.yards.rows.map(({ row: _, ...terms }) => ({
    ...terms,
    tripCost: maybe(terms.tripCost),
    delivery: maybe(terms.delivery),
    deliveryFrom: maybe(terms.deliveryFrom),
  }));
  const names = new Map(listed.map(({ yard }) => [yard.toLowerCase(), yard]));
  const isOpen = listed.length === 0 && tables.yards.given === 0;
  const prices: PriceLine[] = [];
  const problems: Problem[] = [];
  for (const line of tables.prices.rows) {
    const key = line.yard.toLowerCase();
    if (isOpen && !names.has(key)) names.set(key, line.yard);
    const yard = names.get(key);
    if (yard === undefined) problems.push(unknownYard(line, tables));
    else prices.push({ ...line, yard, price: of(line.price) });
  }
  if (!isOpen) return { currency, prices, yards: listed, problems, remarks: [] };
  const yards = [...names.values()].map((yard): YardTerms => ({ yard, tax: 0, taxOn: "goods" }));
  const text =
    "No yards are written down: those that have prices are taken, without tax, trips and delivery.";
  const remarks = yards.length === 0 ? [] : [{ path: [tables.yards.table], text }];
  return { currency, prices, yards, problems, remarks };
}

function unknownYard(line: PriceLine, tables: MoneyTables): Problem {
  return {
    code: "unknown",
    path: [tables.prices.table, line.row, "yard"],
    allowed: `a yard of the table ${tables.yards.table}: ${tables.yards.rows.map(({ yard }) => yard).join(", ")}`,
    received: line.yard,
    remedy: "Add the yard to that table, or write its name as it stands there.",
  };
}
