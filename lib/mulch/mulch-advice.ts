import { Given } from "../measure/given.ts";
import { type Length, printQuantity } from "../measure/index.ts";
import { depthLimits } from "./limits.ts";

/** How deep a mulch is advised: a row of the table of mulch depths. */
export interface MulchDepth {
  readonly mulch: string;
  readonly depthLow: Length;
  readonly depthHigh: Length;
  readonly source: string;
}

/** How a depth stands to what is advised. */
export interface MulchAdvice {
  readonly mulch: string;
  readonly fit: "less" | "within" | "more";
  readonly low: Length;
  readonly high: Length;
  readonly basis: readonly string[];
}

/**
 * Whether a depth of mulch is less than, within or more than what is advised for it: too thin lets
 * weeds through, too deep keeps air and light rain from the soil.
 *
 * @param depth of mulch, 0 to 20 ft.
 * @param advice a row with `mulch`, `depthLow`, `depthHigh`, each 0 to 20 ft, and `source`.
 * @throws ProblemError where a depth is missing, of another kind or out of range, or the row's
 * depths do not rise (`contradiction`).
 * @rule within from the least to the greatest depth advised, both included
 * @source uc-ipm-7441
 * @example
 * const fine = { mulch: "fine", depthLow: inch, depthHigh: times(2, inch), source: "uc-ipm-7441" };
 * mulchAdvice(times(3, inch), fine).fit // => "more"
 */
export function mulchAdvice(depth: Length, advice: MulchDepth): MulchAdvice {
  const given = new Given();
  const row = given.fields(advice, ["advice"]);
  const depthM = given.si(depth, "length", ["depth"], depthLimits);
  const lowM = given.si(row.depthLow, "length", ["advice", "depthLow"], depthLimits);
  const highM = given.si(row.depthHigh, "length", ["advice", "depthHigh"], depthLimits);
  if (given.clean && lowM > highM) {
    given.add({
      code: "contradiction",
      path: ["advice", "depthLow"],
      allowed: "a least depth not above the greatest",
      received: `${printQuantity(advice.depthLow)} and ${printQuantity(advice.depthHigh)}`,
      remedy: "Swap the two depths.",
    });
  }
  given.done();
  // A tenth of a micrometre either way: depths come from sums of inches.
  const fit = depthM < lowM - 1e-7 ? "less" : depthM > highM + 1e-7 ? "more" : "within";
  return {
    mulch: advice.mulch,
    fit,
    low: advice.depthLow,
    high: advice.depthHigh,
    basis: [advice.source],
  };
}
