import {
  type Path,
  type Problem,
  ProblemError,
  placeInWords,
  requireRecord,
} from "../check/index.ts";
import type { PriceLine, YardTerms } from "../cost/index.ts";
import { isCurrencyCode } from "../measure/index.ts";
import type { TableReading } from "../table/index.ts";
import { requireReading } from "./checks.ts";

/** The tables of a garden that hold money. */
export interface MoneyTables {
  readonly prices: TableReading<PriceLine>;
  readonly yards: TableReading<YardTerms>;
}

interface Found {
  readonly currency: string;
  readonly path: Path;
}

/**
 * The one currency of a garden: that of its prices, else of its yards, else `fallback`. Money
 * written without a sign takes it.
 *
 * @param tables the prices and yards as read
 * @param fallback an ISO 4217 code, for a garden in which no sign is written; default USD
 * @throws ProblemError `mixed-currency` where two are written, naming both tables and rows;
 * `unknown` where the fallback is no code
 * @rule the currency that is written; never two
 * @source common practice
 * @example
 * const prices = readPrices(readCsv("yard,item,size,price\nA,compost,60 L,€9", "prices"));
 * gardenCurrency({ prices, yards: readYards(readCsv("", "yards")) }) // => "EUR"
 */
export function gardenCurrency(tables: MoneyTables, fallback = "USD"): string {
  requireRecord(tables, ["tables"]);
  requireReading(tables.prices, ["tables", "prices"]);
  requireReading(tables.yards, ["tables", "yards"]);
  const found = [...inPrices(tables.prices), ...inYards(tables.yards)];
  const [first] = found;
  const other = found.find(({ currency }) => currency !== first?.currency);
  if (first !== undefined && other !== undefined) throw new ProblemError([twoOf(first, other)]);
  if (first !== undefined) return first.currency;
  if (isCurrencyCode(fallback)) return fallback;
  const problem: Problem = {
    code: "unknown",
    path: ["fallback"],
    allowed: "a code of ISO 4217, as USD or EUR",
    received: String(fallback),
    remedy: "Write the three capitals of the currency.",
  };
  throw new ProblemError([problem]);
}

function inPrices(reading: TableReading<PriceLine>): Found[] {
  return reading.rows.flatMap(({ price, row }) =>
    price.currency === undefined
      ? []
      : [{ currency: price.currency, path: [reading.table, row, "price"] }],
  );
}

function inYards(reading: TableReading<YardTerms>): Found[] {
  return reading.rows.flatMap((terms) =>
    (
      [
        ["trip_cost", terms.tripCost],
        ["delivery", terms.delivery],
        ["delivery_from", terms.deliveryFrom],
      ] as const
    ).flatMap(([column, money]) =>
      money?.currency === undefined
        ? []
        : [{ currency: money.currency, path: [reading.table, terms.row, column] }],
    ),
  );
}

function twoOf(first: Found, other: Found): Problem {
  return {
    code: "mixed-currency",
    path: other.path,
    allowed: `${first.currency}, the currency of ${placeInWords(first.path)}`,
    received: other.currency,
    remedy: "Write all prices and costs of one garden in one currency; nothing is exchanged here.",
    also: [first.path],
  };
}
