import type { Caution } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import { type Length, quantity, type Volume, volumeDimension } from "../measure/index.ts";
import { leadInOldSoil } from "../safety/index.ts";
import { type BedSides, insideM } from "./bed-inside.ts";
import { countLimits, depthLimits } from "./limits.ts";
import { type SwellingSoil, swellFactors } from "./swell.ts";

/** How deep, and in how many beds. */
export interface DugSoilOptions {
  /** Settled depth dug out, 0 to 20 ft. */
  readonly depth: Length;
  /** How many beds alike, 1 to 100,000; default 1. */
  readonly count?: number;
}

/** Soil dug out of beds. */
export interface DugSoil {
  /** What it took up in place. */
  readonly inPlace: Volume;
  /** What the loose heap takes up beside the bed. */
  readonly loose: Volume;
  readonly cautions: readonly Caution[];
}

/**
 * The soil dug out of a bed, in place and as the loose heap beside it. Put back, it settles to what
 * it took up before.
 *
 * @param bed outside length and width, 4 in to 1000 ft, and `section.thickness`, 0 to 1 ft.
 * @param soil a row with `bankToLoose` and `bankToCompacted`, each from 0.5 to 3.
 * @param options `depth` dug out, 0 to 20 ft; `count` of beds alike, 1 to 100,000, default 1.
 * @throws ProblemError naming every field that is missing, of another kind or out of range.
 * @rule in place = inside area x depth; loose = in place x bank to loose factor
 * @source fm-5-434
 * @example
 * const bed = { length: times(99, inch), width: times(51, inch), section: { thickness: times(1.5, inch) } };
 * const earth = { soil: "common earth", bankToLoose: 1.25, bankToCompacted: 0.9 };
 * const dug = dugSoil(bed, earth, { depth: times(6, inch) });
 * dug.inPlace // => 16 cu ft
 * dug.loose // => 20 cu ft
 */
export function dugSoil(bed: BedSides, soil: SwellingSoil, options: DugSoilOptions): DugSoil {
  const given = new Given();
  const { lengthM, widthM } = insideM(given, bed, ["bed"]);
  const factors = swellFactors(given, soil, ["soil"]);
  const chosen = given.fields(options, ["options"]);
  const depthM = given.si(chosen.depth, "length", ["depth"], depthLimits);
  const count = given.whole(chosen.count ?? 1, ["count"], countLimits);
  given.done();
  const inPlaceM3 = lengthM * widthM * depthM * count;
  return {
    inPlace: quantity(inPlaceM3, volumeDimension),
    loose: quantity(inPlaceM3 * factors.loose, volumeDimension),
    cautions: inPlaceM3 > 0 ? [leadInOldSoil({ because: "soil dug out of old beds" })] : [],
  };
}
