import type { Area, Length, Range, Volume } from "../measure/index.ts";
import { type BedSides, insideM } from "./bed-inside.ts";
import { Given } from "./given.ts";
import { countLimits, depthLimits } from "./limits.ts";
import { type SettlingMaterial, settlingShares } from "./settling-order.ts";
import { areaOf, lengthOf, volumeOf } from "./si.ts";

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
 * const asPlaced = { material: "soil", settleLow: 0, settleLikely: 0, settleHigh: 0, settleSource: "common practice" };
 * const fill = bedFill(bed, asPlaced, { depth: times(11, inch), depthNow: times(9, inch) });
 * fill.missing // => 2 in
 */
export function bedFill(
  bed: BedSides,
  material: SettlingMaterial,
  options: BedFillOptions,
): BedFill {
  const given = new Given();
  const { lengthM, widthM } = insideM(given, bed, ["bed"]);
  const shares = settlingShares(given, material, ["material"]);
  const chosen = given.record(options, ["options"]);
  const depthM = given.length(chosen.depth, ["depth"], depthLimits);
  const nowM = given.length(chosen.depthNow ?? lengthOf(0), ["depthNow"], depthLimits);
  const count = given.count(chosen.count ?? 1, ["count"], countLimits);
  given.done();

  const areaM2 = lengthM * widthM * count;
  const missingM = Math.max(0, depthM - nowM);
  const settledM3 = areaM2 * missingM;
  return {
    area: areaOf(areaM2),
    depth: options.depth,
    depthNow: lengthOf(nowM),
    missing: lengthOf(missingM),
    there: volumeOf(areaM2 * nowM),
    settled: volumeOf(settledM3),
    order: {
      low: volumeOf(settledM3 / (1 - shares.low)),
      likely: volumeOf(settledM3 / (1 - shares.likely)),
      high: volumeOf(settledM3 / (1 - shares.high)),
      basis: [material.settleSource],
    },
    surplus: volumeOf(areaM2 * Math.max(0, nowM - depthM)),
  };
}
