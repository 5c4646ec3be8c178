import { Given } from "../measure/given.ts";
import {
  type Area,
  areaDimension,
  type Length,
  lengthDimension,
  quantity,
  type Range,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import { type BedSides, insideM } from "./bed-inside.ts";
import { countLimits, depthLimits } from "./limits.ts";
import { type SettlingMaterial, settlingShares } from "./settling-order.ts";
import { sourcesOf } from "./sources.ts";

/** What it takes to fill a bed, or several alike. */
export interface BedFill {
  /** Inside area of all of them. */
  readonly area: Area;
  /** The settled depth wanted and the depth there. */
  readonly depth: Length;
  readonly depthNow: Length;
  /** Depth still missing; never negative. */
  readonly missing: Length;
  /** What is there already, settled. */
  readonly there: Volume;
  /** What is missing, settled. */
  readonly settled: Volume;
  /** What to order, loose, so that it settles to what is missing. */
  readonly order: Range<Volume>;
  /** What stands above the wanted depth and must come out; none where soil is missing. */
  readonly surplus: Volume;
}

/** How deep, over what is there, in how many beds. */
export interface BedFillOptions {
  /** Settled depth wanted, 0 to 20 ft. */
  readonly depth: Length;
  /** Depth there now, settled, 0 to 20 ft; default none. */
  readonly depthNow?: Length;
  /** How many beds alike, 1 to 100,000; default 1. */
  readonly count?: number;
}

/**
 * What to order for a bed so that the settled depth is what was asked for: what is there is taken
 * off, and settling is allowed for. Only what is ordered is taken to settle; what is there has.
 *
 * @param bed outside length and width, 4 in to 1000 ft, and `section.thickness`, 0 to 1 ft.
 * @param material a row with `settleLow`, `settleLikely`, `settleHigh`, shares from 0 to 0.9.
 * @param options `depth` wanted, 0 to 20 ft; `depthNow`, 0 to 20 ft, default none; `count` of beds
 * alike, 1 to 100,000, default 1.
 * @throws ProblemError naming every field that is missing, of another kind or out of range.
 * @rule settled = inside area x (depth - depth now), not below none; order = settled / (1 - share lost in settling)
 * @source common practice
 * @example
 * const bed = { length: times(8, foot), width: times(4, foot), section: { thickness: times(1.5, inch) } };
 * const mix = { material: "mix", settleLow: 0.1, settleLikely: 0.125, settleHigh: 0.15, settleSource: "ontario-soil-details" };
 * const fill = bedFill(bed, mix, { depth: times(9, inch), depthNow: times(7, inch), count: 7 });
 * fill.missing // => 2 in
 * fill.settled // => 1.26 cu yd
 * fill.order.likely // => 1.44 cu yd
 */
export function bedFill(
  bed: BedSides,
  material: SettlingMaterial,
  options: BedFillOptions,
): BedFill {
  const given = new Given();
  const { lengthM, widthM } = insideM(given, bed, ["bed"]);
  const shares = settlingShares(given, material, ["material"]);
  const chosen = given.fields(options, ["options"]);
  const depthM = given.si(chosen.depth, "length", ["depth"], depthLimits);
  const nowM = given.si(
    chosen.depthNow ?? quantity(0, lengthDimension),
    "length",
    ["depthNow"],
    depthLimits,
  );
  const count = given.whole(chosen.count ?? 1, ["count"], countLimits);
  given.done();

  const areaM2 = lengthM * widthM * count;
  const missingM = Math.max(0, depthM - nowM);
  const settledM3 = areaM2 * missingM;
  return {
    area: quantity(areaM2, areaDimension),
    depth: options.depth,
    depthNow: quantity(nowM, lengthDimension),
    missing: quantity(missingM, lengthDimension),
    there: quantity(areaM2 * nowM, volumeDimension),
    settled: quantity(settledM3, volumeDimension),
    order: {
      low: quantity(settledM3 / (1 - shares.low), volumeDimension),
      likely: quantity(settledM3 / (1 - shares.likely), volumeDimension),
      high: quantity(settledM3 / (1 - shares.high), volumeDimension),
      basis: sourcesOf(material.settleSource),
    },
    surplus: quantity(areaM2 * Math.max(0, nowM - depthM), volumeDimension),
  };
}
