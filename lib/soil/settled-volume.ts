import type { Range, Volume } from "../measure/index.ts";
import { Given } from "./given.ts";
import { volumeLimits } from "./limits.ts";
import { type SettlingMaterial, settlingShares } from "./settling-order.ts";
import { volumeOf } from "./si.ts";

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
 * const mix = { material: "mix", settleLow: 0, settleLikely: 0.125, settleHigh: 0.2, settleSource: "common practice" };
 * round(amount(settledVolume(times(8, cubicFoot), mix).likely, cubicFoot), 3) // => 7
 */
export function settledVolume(placed: Volume, material: SettlingMaterial): Range<Volume> {
  const given = new Given();
  const placedM3 = given.volume(placed, ["placed"], volumeLimits);
  const shares = settlingShares(given, material, ["material"]);
  given.done();
  return {
    low: volumeOf(placedM3 * (1 - shares.high)),
    likely: volumeOf(placedM3 * (1 - shares.likely)),
    high: volumeOf(placedM3 * (1 - shares.low)),
    basis: [material.settleSource],
  };
}
