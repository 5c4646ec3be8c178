import type { Range, Volume } from "../measure/index.ts";
import { Given } from "./given.ts";
import { shareLimits, volumeLimits } from "./limits.ts";
import { volumeOf } from "./si.ts";

/** How much of its placed volume a material loses as it settles in the first season. */
export interface SettlingMaterial {
  readonly material: string;
  /** Share of the placed volume, 0 to 0.9: 0.1 means that 10 ft3 placed stand as 9 ft3. */
  readonly settleLow: number;
  readonly settleLikely: number;
  readonly settleHigh: number;
  /** Source id of the three shares. */
  readonly settleSource: string;
}

/**
 * What to order, as the yard measures it loose, so that the *settled* volume is what was asked for.
 * The range comes from the material's range of settlement.
 *
 * @param settled volume wanted once it has settled, 0 to 1,000,000 m3.
 * @param material a row with `settleLow`, `settleLikely`, `settleHigh`, shares from 0 to 0.9.
 * @throws ProblemError where the volume or a share is missing, of another kind or out of range, or
 * where the shares do not rise from low to high (`contradiction`).
 * @rule order = settled volume / (1 - share lost in settling)
 * @source common practice
 * @example
 * const mix = { material: "mix", settleLow: 0, settleLikely: 0.125, settleHigh: 0.2, settleSource: "common practice" };
 * const order = settlingOrder(times(8, cubicFoot), mix);
 * round(amount(order.likely, cubicFoot), 2) // => 9.14
 * round(amount(order.high, cubicFoot), 2) // => 10
 */
export function settlingOrder(settled: Volume, material: SettlingMaterial): Range<Volume> {
  const given = new Given();
  const settledM3 = given.volume(settled, ["settled"], volumeLimits);
  const shares = settlingShares(given, material, ["material"]);
  given.done();
  return {
    low: volumeOf(settledM3 / (1 - shares.low)),
    likely: volumeOf(settledM3 / (1 - shares.likely)),
    high: volumeOf(settledM3 / (1 - shares.high)),
    basis: [material.settleSource],
  };
}

/** The three shares of a row, checked. */
export function settlingShares(
  given: Given,
  material: SettlingMaterial,
  path: readonly (string | number)[],
): { low: number; likely: number; high: number } {
  const row = given.record(material, path);
  const low = given.number(row.settleLow, [...path, "settleLow"], shareLimits);
  const likely = given.number(row.settleLikely, [...path, "settleLikely"], shareLimits);
  const high = given.number(row.settleHigh, [...path, "settleHigh"], shareLimits);
  if (given.clean() && !(low <= likely && likely <= high)) {
    given.refuse({
      code: "contradiction",
      path: [...path, "settleLikely"],
      allowed: "shares that rise from settleLow over settleLikely to settleHigh",
      received: `${low}, ${likely}, ${high}`,
      remedy: "Put the three shares in order.",
    });
  }
  return { low, likely, high };
}
