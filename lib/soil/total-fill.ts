import { Given } from "../measure/given.ts";
import {
  type Area,
  areaDimension,
  quantity,
  type Range,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import type { BedFill } from "./bed-fill.ts";
import { areaLimits, volumeLimits } from "./limits.ts";

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
 * @throws ProblemError where this is no list, or an entry is no fill of 0 to 10,000,000 m2 and
 * 1,000,000 m3.
 * @rule totals = sums over the beds; low with low, high with high
 * @source common practice
 * @example
 * const bed = { length: times(8, foot), width: times(4, foot), section: { thickness: times(1.5, inch) } };
 * const mix = { material: "mix", settleLow: 0.1, settleLikely: 0.125, settleHigh: 0.15, settleSource: "ontario-soil-details" };
 * const fill = bedFill(bed, mix, { depth: times(11, inch) });
 * totalFill([fill, fill]).order.high // => 2.32 cu yd
 */
export function totalFill(fills: readonly BedFill[]): TotalFill {
  const given = new Given();
  const rows = given.list(fills, ["fills"]).map((fill, at) => {
    const path = ["fills", at + 1];
    const row = given.fields(fill, path);
    const order = given.fields(row.order, [...path, "order"]);
    const volume = (value: unknown, ...place: string[]): number =>
      given.si(value, "volume", [...path, ...place], volumeLimits);
    return {
      areaM2: given.si(row.area, "area", [...path, "area"], areaLimits),
      thereM3: volume(row.there, "there"),
      settledM3: volume(row.settled, "settled"),
      lowM3: volume(order.low, "order", "low"),
      likelyM3: volume(order.likely, "order", "likely"),
      highM3: volume(order.high, "order", "high"),
      surplusM3: volume(row.surplus, "surplus"),
    };
  });
  given.done();
  const sum = (key: keyof (typeof rows)[number]): number =>
    rows.reduce((total, row) => total + row[key], 0);
  const volume = (key: keyof (typeof rows)[number]): Volume => quantity(sum(key), volumeDimension);
  return {
    area: quantity(sum("areaM2"), areaDimension),
    there: volume("thereM3"),
    settled: volume("settledM3"),
    order: {
      low: volume("lowM3"),
      likely: volume("likelyM3"),
      high: volume("highM3"),
      basis: [...new Set(fills.flatMap((fill) => fill.order.basis))],
    },
    surplus: volume("surplusM3"),
  };
}
