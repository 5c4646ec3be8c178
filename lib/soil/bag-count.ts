import { Given } from "../measure/given.ts";
import { quantity, roundUpTo, type Volume, volumeDimension } from "../measure/index.ts";
import { bagLimits, volumeLimits } from "./limits.ts";

/** Whole bags that cover a volume. */
export interface BagCount {
  readonly bags: number;
  /** What the bags hold together. */
  readonly volume: Volume;
  readonly leftover: Volume;
}

/**
 * The whole bags that cover a volume.
 *
 * @param volume needed, 0 to 1,000,000 m3; none takes no bag.
 * @param bag what one bag holds, 0.1 L to 1000 m3.
 * @throws ProblemError where a volume is missing, of another kind or out of range.
 * @rule bags = volume / bag, rounded up to a whole bag
 * @source common practice
 * @example
 * bagCount(times(1, cubicYard), times(2, cubicFoot)).bags // => 14
 */
export function bagCount(volume: Volume, bag: Volume): BagCount {
  const given = new Given();
  const needM3 = given.si(volume, "volume", ["volume"], volumeLimits);
  const bagM3 = given.si(bag, "volume", ["bag"], bagLimits);
  given.done();
  const bags = roundUpTo(needM3 / bagM3, 1);
  return {
    bags,
    volume: quantity(bags * bagM3, volumeDimension),
    leftover: quantity(Math.max(0, bags * bagM3 - needM3), volumeDimension),
  };
}
