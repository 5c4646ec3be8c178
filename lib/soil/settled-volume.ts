import { Given } from "../measure/given.ts";
import { quantity, type Range, type Volume, volumeDimension } from "../measure/index.ts";
import { volumeLimits } from "./limits.ts";
import { type SettlingMaterial, settlingShares } from "./settling-order.ts";
import { sourcesOf } from "./sources.ts";

/**
 * What is left of a placed volume once it has settled: the way back from `settlingOrder`. `low` is
 * the smallest volume left, so it belongs to the highest share lost.
 *
 * @param placed volume as placed, loose, 0 to 1,000,000 m3.
 * @param material a row with `settleLow`, `settleLikely`, `settleHigh`, shares from 0 to 0.9.
 * @throws ProblemError where the volume or a share is missing, of another kind or out of range, or
 * where the shares do not rise from low to high (`contradiction`).
 * @rule settled volume = placed volume x (1 - share lost in settling)
 * @source common practice
 * @example
 * const mix = { material: "mix", settleLow: 0.1, settleLikely: 0.125, settleHigh: 0.15, settleSource: "ontario-soil-details" };
 * settledVolume(times(8, cubicFoot), mix).likely // => 7 cu ft
 */
export function settledVolume(placed: Volume, material: SettlingMaterial): Range<Volume> {
  const given = new Given();
  const placedM3 = given.si(placed, "volume", ["placed"], volumeLimits);
  const shares = settlingShares(given, material, ["material"]);
  given.done();
  return {
    low: quantity(placedM3 * (1 - shares.high), volumeDimension),
    likely: quantity(placedM3 * (1 - shares.likely), volumeDimension),
    high: quantity(placedM3 * (1 - shares.low), volumeDimension),
    basis: sourcesOf(material.settleSource),
  };
}
