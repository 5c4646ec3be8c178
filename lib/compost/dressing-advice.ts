import { Given } from "../measure/given.ts";
import { type Length, printQuantity } from "../measure/index.ts";
import { depthLimits } from "./limits.ts";

/** How deep compost is advised for a use: a row of the table of compost depths. */
export interface CompostDepth {
  readonly use: string;
  readonly depthLow: Length;
  readonly depthHigh: Length;
  readonly source: string;
}

/** How a depth stands to what is advised. */
export interface DressingAdvice {
  readonly use: string;
  readonly fit: "less" | "within" | "more";
  readonly low: Length;
  readonly high: Length;
  readonly basis: readonly string[];
}

/**
 * Whether a depth of compost is less than, within or more than what is advised for a use.
 *
 * @param depth of compost, 0 to 20 ft.
 * @param advice a row with `use`, `depthLow`, `depthHigh`, each 0 to 20 ft, and `source`.
 * @throws ProblemError where a depth is missing, of another kind or out of range, or the row's
 * depths do not rise (`contradiction`).
 * @rule within from the least to the greatest depth advised, both included
 * @source common practice
 * @example
 * const yearly = { use: "existing bed", depthLow: times(0.25, inch), depthHigh: inch, source: "osu-em9308" };
 * dressingAdvice(times(2, inch), yearly).fit // => "more"
 */
export function dressingAdvice(depth: Length, advice: CompostDepth): DressingAdvice {
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
    use: advice.use,
    fit,
    low: advice.depthLow,
    high: advice.depthHigh,
    basis: [advice.source],
  };
}
