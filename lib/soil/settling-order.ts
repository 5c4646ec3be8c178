import { Given } from "../measure/given.ts";
import { quantity, type Range, type Volume, volumeDimension } from "../measure/index.ts";
import { shareLimits, volumeLimits } from "./limits.ts";
import { sourcesOf } from "./sources.ts";

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
 * const mix = { material: "mix", settleLow: 0.1, settleLikely: 0.125, settleHigh: 0.15, settleSource: "ontario-soil-details" };
 * settlingOrder(times(7, cubicFoot), mix).likely // => 8 cu ft
 * settlingOrder(times(7, cubicFoot), mix).high // => 8.24 cu ft
 */
export function settlingOrder(settled: Volume, material: SettlingMaterial): Range<Volume> {
  const given = new Given();
  const settledM3 = given.si(settled, "volume", ["settled"], volumeLimits);
  const shares = settlingShares(given, material, ["material"]);
  given.done();
  return {
    low: quantity(settledM3 / (1 - shares.low), volumeDimension),
    likely: quantity(settledM3 / (1 - shares.likely), volumeDimension),
    high: quantity(settledM3 / (1 - shares.high), volumeDimension),
    basis: sourcesOf(material.settleSource),
  };
}

/** The three shares of a row, checked. */
export function settlingShares(
  given: Given,
  material: SettlingMaterial,
  path: readonly (string | number)[],
): { low: number; likely: number; high: number } {
  const row = given.fields(material, path);
  const low = given.plain(row.settleLow, [...path, "settleLow"], shareLimits);
  const likely = given.plain(row.settleLikely, [...path, "settleLikely"], shareLimits);
  const high = given.plain(row.settleHigh, [...path, "settleHigh"], shareLimits);
  if (given.clean && !(low <= likely && likely <= high)) {
    given.add({
      code: "contradiction",
      path: [...path, "settleLikely"],
      allowed: "shares that rise from settleLow over settleLikely to settleHigh",
      received: `${low}, ${likely}, ${high}`,
      remedy: "Put the three shares in order.",
    });
  }
  return { low, likely, high };
}
