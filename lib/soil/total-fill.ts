import type { Area, Range, Volume } from "../measure/index.ts";
import type { BedFill } from "./bed-fill.ts";
import { areaOf, volumeOf } from "./si.ts";

/** The fills of several beds together. */
export interface TotalFill {
  readonly area: Area;
  readonly there: Volume;
  readonly settled: Volume;
  readonly order: Range<Volume>;
  readonly surplus: Volume;
}

/**
 * The fills of several beds added up. Low is added to low and high to high: the same load settles
 * alike in every bed, so the errors do not cancel. One bed's surplus is not put into another.
 *
 * @param fills results of `bedFill`, none included.
 * @rule totals = sums over the beds; low with low, high with high
 * @source common practice
 * @example
 * totalFill([]).settled // => 0 ft³
 */
export function totalFill(fills: readonly BedFill[]): TotalFill {
  const sum = (part: (fill: BedFill) => { readonly si: number }): number =>
    fills.reduce((total, fill) => total + part(fill).si, 0);
  return {
    area: areaOf(sum((fill) => fill.area)),
    there: volumeOf(sum((fill) => fill.there)),
    settled: volumeOf(sum((fill) => fill.settled)),
    order: {
      low: volumeOf(sum((fill) => fill.order.low)),
      likely: volumeOf(sum((fill) => fill.order.likely)),
      high: volumeOf(sum((fill) => fill.order.high)),
      basis: [...new Set(fills.flatMap((fill) => fill.order.basis))],
    },
    surplus: volumeOf(sum((fill) => fill.surplus)),
  };
}
