import { Given } from "../measure/given.ts";
import type { Length } from "../measure/index.ts";
import { depthLimits } from "./limits.ts";

/** Weeds counted under a mulch: a row of the table of weeds. */
export interface WeedCount {
  readonly mulch: string;
  readonly depth: Length;
  /** Grams of weeds in a year for each m2, above 0, to 100,000. */
  readonly weeds: number;
  readonly source: string;
}

/** The weeds that come through. */
export interface WeedsLeft {
  /** Share of those without mulch, 0 to 1. */
  readonly left: number;
  /** Whether the depth lies within those counted. */
  readonly counted: boolean;
  readonly basis: readonly string[];
}

/**
 * The share of the weeds that comes through a mulch of a depth, by a straight line through the
 * logarithms of what was counted. Counted were coarse wood chips under trees and shrubs, from 4 in up:
 * of an inch of bark over vegetables it is no more than a hint.
 *
 * @param depth of the mulch, 0 to 20 ft.
 * @param counts two rows or more, of different depths: `depth`, 0 to 20 ft, and `weeds` above 0.
 * @throws ProblemError where there are fewer than two, all of one depth (`contradiction`), or a field is
 * missing, of another kind or out of range.
 * @rule ln(weeds) = a + b x depth by least squares; share left = exp(b x depth), at most 1
 * @source eulenberg-2012
 * @example
 * Number(weedsLeft(times(4, inch), published.weedMulch).left.toFixed(2)) // => 0.2
 */
export function weedsLeft(depth: Length, counts: readonly WeedCount[]): WeedsLeft {
  const given = new Given();
  const depthM = given.si(depth, "length", ["depth"], depthLimits);
  const rows = given.list(counts, ["counts"], 2).map((count, at) => {
    const path = ["counts", at + 1];
    const row = given.fields(count, path);
    return {
      x: given.si(row.depth, "length", [...path, "depth"], depthLimits),
      y: Math.log(given.plain(row.weeds, [...path, "weeds"], { above: 0, max: 100_000 })),
    };
  });
  const mean = (key: "x" | "y"): number =>
    rows.reduce((sum, row) => sum + row[key] / rows.length, 0);
  const [x, y] = [mean("x"), mean("y")];
  const spread = rows.reduce((sum, row) => sum + (row.x - x) ** 2, 0);
  if (given.clean && spread === 0) {
    given.add({
      code: "contradiction",
      path: ["counts"],
      allowed: "counts at two depths or more",
      received: "counts at one depth",
      remedy: "Give a count without mulch, too.",
    });
  }
  given.done();
  const slope = rows.reduce((sum, row) => sum + (row.x - x) * (row.y - y), 0) / spread;
  const depths = rows.map((row) => row.x);
  return {
    left: Math.min(1, Math.exp(slope * depthM)),
    counted: depthM >= Math.min(...depths) && depthM <= Math.max(...depths),
    basis: [...new Set(counts.map(({ source }) => source))],
  };
}
