import { type Path, type Problem, ProblemError, requireRecord } from "../check/index.ts";
import {
  Checks,
  currencyCodes,
  kilogram,
  kilometre,
  type Mass,
  type Money,
  metre,
  requireMoney,
  requireNumber,
  times,
} from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import { centsOf, moneyFromCents, sumBounds, wholeCents } from "./cents.ts";
import type { Bought, ReceiptLine, YardReceipt } from "./receipt.ts";
import { salesTax } from "./sales-tax.ts";
import { boughtList } from "./shapes.ts";
import type { YardTerms } from "./yard-terms.ts";

/** How prices are taxed and goods are fetched. */
export interface YardReceiptOptions {
  /** Whether the prices have the tax in them. Default: false. */
  readonly taxIncluded?: boolean;
  /** What the car carries in one trip. Default: everything. */
  readonly carPayload?: Mass;
  /** The currency, for a receipt without lines. Default: that of the first price. */
  readonly currency?: string;
}

/**
 * The receipt of one yard: each line is rounded to the currency's minor unit, tax is worked out
 * once on their sum (and on delivery where the yard's terms say so), delivery is paid once, trips
 * are paid for what is fetched and are not taxed. What the car carries sets the number of trips as
 * far as masses are known; one trip at least where anything is fetched.
 *
 * @param bought what is bought there, none included: `count` from 0 to 1,000,000, `price` of one size
 * @param terms the yard's tax, trip cost and delivery
 * @param options `taxIncluded`, default false; `carPayload`, default no limit; `currency`
 * @throws ProblemError where a price is no money, a count no number, a tax not from 0 to 1, or two
 * currencies meet (`mixed-currency`)
 * @rule total = sum of rounded lines + tax rounded once + delivery + trips x trip cost
 * @source ssuta
 * @example
 * const terms = { yard: "Alder", tax: 0.0725, taxOn: "goods" };
 * const screws = { item: "3 in screws", use: "fasteners", size: 50, count: 3, price: money(0.9, "USD") };
 * yardReceipt([screws], terms).tax // => $0.20
 */
export function yardReceipt(
  bought: readonly Bought[],
  terms: YardTerms,
  options: YardReceiptOptions = {},
): YardReceipt {
  requireShape(bought, boughtList, ["bought"]);
  checkTerms(terms, options);
  const { taxIncluded = false, currency = bought[0]?.price?.currency } = options;
  const lines = bought.map((each, index) => receiptLine(each, index, currency));
  for (const name of ["tripCost", "delivery", "deliveryFrom"] as const) {
    const cost = terms[name];
    if (cost !== undefined) requireOneCurrency(cost, currency, ["terms", name]);
  }
  const goods = lines.reduce((sum, line) => sum + centsOf(line.total), 0);
  const isDelivered = lines.some((line) => line.delivered === true && line.count > 0);
  const delivery = isDelivered ? centsOfOptional(terms.delivery) : 0;
  const taxed = terms.taxOn === "goods and delivery" ? goods + delivery : goods;
  const tax = salesTax(moneyFromCents(taxed, currency), terms.tax, { included: taxIncluded });
  const trips = tripsFor(lines, terms.payload ?? options.carPayload);
  const tripCost = trips * centsOfOptional(terms.tripCost);
  const sum = goods + delivery + (taxIncluded ? 0 : centsOf(tax)) + tripCost;
  const money = (cents: number) => moneyFromCents(cents, currency);
  return {
    yard: terms.yard,
    lines,
    goods: money(goods),
    delivery: money(delivery),
    tax,
    taxIncluded,
    trips,
    tripCost: money(tripCost),
    total: money(sum),
  };
}

function receiptLine(bought: Bought, index: number, currency: string | undefined): ReceiptLine {
  requireMoney(bought.price, ["bought", index + 1, "price"], sumBounds);
  requireOneCurrency(bought.price, currency, ["bought", index + 1, "price"]);
  requireNumber(bought.count, ["bought", index + 1, "count"], { min: 0, max: 1_000_000 });
  const cents = wholeCents(centsOf(bought.price) * bought.count);
  return { ...bought, total: moneyFromCents(cents, currency) };
}

function checkTerms(terms: YardTerms, options: YardReceiptOptions): void {
  requireRecord(terms, ["terms"]);
  requireRecord(options, ["options"]);
  const checks = new Checks()
    .text(terms.yard, ["terms", "yard"])
    .number(terms.tax, ["terms", "tax"], { min: 0, max: 1 })
    .choice(terms.taxOn, ["goods", "goods and delivery"], ["terms", "taxOn"])
    .choice(
      options.taxIncluded === undefined ? false : options.taxIncluded,
      [true, false],
      ["options", "taxIncluded"],
    );
  const { distance } = terms;
  const far = { min: times(0, metre), max: times(100_000, kilometre) };
  if (distance !== undefined) checks.quantity(distance, "length", ["terms", "distance"], far);
  for (const name of ["tripCost", "delivery", "deliveryFrom"] as const) {
    if (terms[name] !== undefined) checks.money(terms[name], ["terms", name], sumBounds);
  }
  const payload = { min: kilogram, max: times(100_000, kilogram) };
  if (terms.payload !== undefined) {
    checks.quantity(terms.payload, "mass", ["terms", "payload"], payload);
  }
  if (options.carPayload !== undefined) {
    checks.quantity(options.carPayload, "mass", ["options", "carPayload"], payload);
  }
  if (options.currency !== undefined) {
    checks.choice(options.currency, currencyCodes, ["options", "currency"]);
  }
  checks.done();
}

/** Money without a currency takes the receipt's. */
function requireOneCurrency(money: Money, currency: string | undefined, path: Path): void {
  if (money.currency === undefined || currency === undefined) return;
  if (money.currency === currency) return;
  const problem: Problem = {
    code: "mixed-currency",
    path,
    allowed: `money in ${currency}, as the receipt's`,
    received: money.currency,
    remedy: "Give all sums of one receipt in one currency; nothing is exchanged here.",
  };
  throw new ProblemError([problem]);
}

function centsOfOptional(money: Money | undefined): number {
  return money === undefined ? 0 : wholeCents(centsOf(money));
}

function tripsFor(lines: readonly ReceiptLine[], payload: Mass | undefined): number {
  const fetched = lines.filter((line) => line.delivered !== true && line.count > 0);
  if (fetched.length === 0) return 0;
  const kilograms = fetched.reduce((sum, line) => sum + (line.mass?.si ?? 0), 0);
  if (payload === undefined) return 1;
  return Math.max(1, Math.ceil(kilograms / payload.si - 1e-9));
}
