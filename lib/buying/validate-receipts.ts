import type { ReceiptLine, YardReceipt, YardTerms } from "../cost/index.ts";
import type { Findings } from "../lumber/findings.ts";
import { minorDigits } from "../measure/index.ts";
import type { Way } from "./buying-plan.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import { lineMassKg } from "./validate-goods.ts";

// Receipts are added up a second time, in minor units; nothing here uses the planner's code.

type Path = readonly (string | number)[];

/** A receipt with what it must agree with. */
interface Given {
  readonly problem: BuyingProblem;
  readonly receipt: YardReceipt;
  readonly terms: YardTerms;
  readonly way: Way;
  readonly path: Path;
}

const perMajor = ({ currency }: BuyingProblem): number => 10 ** minorDigits(currency);

/** Whole minor units, a half away from zero. */
const rounded = (minor: number): number => Math.floor(Number(minor.toPrecision(14)) + 0.5);

/** The receipt of one yard: lines, sum, delivery, tax rounded once, trips, total, least order. */
export function checkReceipt(findings: Findings, given: Given): void {
  const { problem, receipt, terms, way, path } = given;
  const minor = (money: { readonly si: number } | undefined): number =>
    Number(((money?.si ?? 0) * perMajor(problem)).toPrecision(14));
  const hasAny = receipt.lines.some((line) => line.count > 0);
  findings.holds(hasAny, path, { allowed: "something bought", received: "nothing" });
  for (const [at, line] of receipt.lines.entries()) {
    const place = [...path, "lines", at + 1];
    findings.same(rounded(minor(line.price) * line.count), minor(line.total), [...place, "total"]);
    checkCarried(findings, line, { ...given, path: place });
  }
  const goods = receipt.lines.reduce((sum, line) => sum + minor(line.total), 0);
  const delivery = way === "delivered" ? rounded(minor(terms.delivery)) : 0;
  const taxed = terms.taxOn === "goods and delivery" ? goods + delivery : goods;
  const { taxIncluded } = problem;
  const tax = rounded(taxed * (taxIncluded ? terms.tax / (1 + terms.tax) : terms.tax));
  const trips = tripsFor(given);
  const tripCost = trips * rounded(minor(terms.tripCost));
  findings.same(goods, minor(receipt.goods), [...path, "goods"]);
  findings.same(delivery, minor(receipt.delivery), [...path, "delivery"]);
  findings.same(Number(taxIncluded), Number(receipt.taxIncluded), [...path, "taxIncluded"]);
  findings.same(tax, minor(receipt.tax), [...path, "tax"]);
  findings.same(trips, receipt.trips, [...path, "trips"]);
  findings.same(tripCost, minor(receipt.tripCost), [...path, "tripCost"]);
  const total = goods + delivery + (taxIncluded ? 0 : tax) + tripCost;
  findings.same(total, minor(receipt.total), [...path, "total"]);
  const least = minor(terms.deliveryFrom);
  findings.holds(way === "fetched" || goods >= least - 1e-6, [...path, "goods"], {
    allowed: `an order of ${least} minor units or more, to be delivered`,
    received: String(goods),
  });
}

/** An order that is delivered brings all; the car takes loose goods only where it may. */
function checkCarried(findings: Findings, line: ReceiptLine, given: Given): void {
  const { problem, way, path } = given;
  const isBrought = line.delivered === true;
  findings.holds(isBrought === (way === "delivered"), [...path, "delivered"], {
    allowed: way,
    received: isBrought ? "delivered" : "fetched",
  });
  const isCarried = isBrought || line.form !== "bulk" || problem.carriesBulk;
  findings.holds(isCarried, [...path, "form"], {
    allowed: "no loose goods in the car",
    received: line.item,
  });
  const massKg = lineMassKg(problem, line);
  if (line.mass === undefined || massKg === undefined) return;
  findings.same(massKg, line.mass.si, [...path, "mass"], 1e-6 * Math.max(1, massKg));
}

/** Trips are made for all that is fetched, as many as its weight asks, one at least. */
function tripsFor({ problem, receipt, terms, way }: Given): number {
  if (way === "delivered") return 0;
  const payload = terms.payload ?? problem.carPayload;
  const massKg = receipt.lines.reduce(
    (sum, line) => sum + (lineMassKg(problem, line) ?? line.mass?.si ?? 0),
    0,
  );
  return payload === undefined ? 1 : Math.max(1, Math.ceil(massKg / payload.si - 1e-9));
}
