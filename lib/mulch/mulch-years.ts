import { Given } from "../measure/given.ts";
import { type Length, lengthDimension, quantity, type Range } from "../measure/index.ts";
import { depthLimits } from "./limits.ts";

/** What a mulch loses of its depth in a year: a row of the table of mulch losses. */
export interface MulchLoss {
  readonly mulch: string;
  readonly lossLow: Length;
  readonly loss: Length;
  readonly lossHigh: Length;
  readonly source: string;
}

/** One year of a mulch that is topped up each spring. */
export interface MulchYear {
  /** 0 for the year it is laid. */
  readonly year: number;
  /** Laid in spring. */
  readonly laid: Range<Length>;
  /** What is left before the next spring. */
  readonly left: Range<Length>;
}

/** The depth to hold, and for how long. */
export interface MulchYearsOptions {
  /** Held each spring, 0 to 20 ft. */
  readonly depth: Length;
  /** Years, 1 to 50; default 15. */
  readonly years?: number;
}

/**
 * A mulch that is topped up to its depth each spring: what is laid each year, and what is left of it
 * before the next.
 *
 * @param loss a row with `lossLow`, `loss` and `lossHigh` a year, each 0 to 20 ft.
 * @param options `depth` held, 0 to 20 ft; `years`, 1 to 50, default 15.
 * @throws ProblemError where a field is missing, of another kind or out of range; where the losses do
 * not rise (`contradiction`).
 * @rule laid in the first year = depth, then the year's loss; left = depth - loss, not below none
 * @source common practice
 * @example
 * const bark = published.mulchLosses.find((row) => row.mulch === "pine bark");
 * mulchYears(bark, { depth: times(2, inch) })[1].laid.likely // => 1 in
 */
export function mulchYears(loss: MulchLoss, options: MulchYearsOptions): readonly MulchYear[] {
  const given = new Given();
  const row = given.fields(loss, ["loss"]);
  const chosen = given.fields(options, ["options"]);
  const part = (key: string): number => given.si(row[key], "length", ["loss", key], depthLimits);
  const [low, likely, high] = [part("lossLow"), part("loss"), part("lossHigh")];
  const depthM = given.si(chosen.depth, "length", ["depth"], depthLimits);
  const years = given.whole(chosen.years ?? 15, ["years"], { min: 1, max: 50 });
  if (given.clean && !(low <= likely && likely <= high)) {
    given.add({
      code: "contradiction",
      path: ["loss", "loss"],
      allowed: "losses that rise from lossLow over loss to lossHigh",
      received: `${low}, ${likely}, ${high} m`,
      remedy: "Put the three losses in order.",
    });
  }
  given.done();
  const range = (of: (lossM: number) => number, turned: boolean): Range<Length> => ({
    low: quantity(of(turned ? high : low), lengthDimension),
    likely: quantity(of(likely), lengthDimension),
    high: quantity(of(turned ? low : high), lengthDimension),
    basis: [loss.source],
  });
  return Array.from({ length: years }, (_, year) => ({
    year,
    laid: range((lossM) => (year === 0 ? depthM : Math.min(depthM, lossM)), false),
    left: range((lossM) => Math.max(0, depthM - lossM), true),
  }));
}
