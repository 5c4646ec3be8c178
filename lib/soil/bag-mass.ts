import type { Caution } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import { type Mass, massDimension, quantity, type Range, type Volume } from "../measure/index.ts";
import { cautionsForLift } from "../safety/index.ts";
import { liftedLimits } from "./limits.ts";
import { densitiesOf, type Three, type WeighedMaterial } from "./soil-mass.ts";
import { sourcesOf } from "./sources.ts";

/** What one bag, bucket or barrow load weighs. */
export interface BagMass {
  /** As sold. */
  readonly moist: Range<Mass>;
  /** After rain on the stack. */
  readonly wet: Range<Mass>;
  /** Lifting, where it may weigh more than one person should lift, moist. */
  readonly cautions: readonly Caution[];
}

/**
 * What a bag of a material weighs, as sold and rained on. Judged for lifting is the heaviest it may
 * be as sold; the maker's figure on the bag is better than any range.
 *
 * @param bag what one bag, bucket or barrow holds, 0.1 L to 5 m3.
 * @param material a row with three densities (low, likely, high) for each state, 1 to 5000 kg/m3.
 * @throws ProblemError where the volume or a density is missing, of another kind or out of range.
 * @rule mass = volume x bulk density; a caution where the heaviest moist bag is over the load constant
 * @source niosh-94-110
 * @example
 * const d = (value) => times(value, kilogramPerCubicMetre);
 * const soil = {
 *   material: "topsoil", source: "calrecycle-calculations",
 *   densityDryLow: d(1100), densityDry: d(1246), densityDryHigh: d(1500),
 *   densityMoistLow: d(1187), densityMoist: d(1305), densityMoistHigh: d(1602),
 *   densityWetLow: d(1602), densityWet: d(1780), densityWetHigh: d(1851),
 * };
 * bagMass(cubicFoot, soil).moist.likely // => 81.5 lb
 * bagMass(cubicFoot, soil).cautions[0].id // => "lifting"
 */
export function bagMass(bag: Volume, material: WeighedMaterial): BagMass {
  const given = new Given();
  const m3 = given.si(bag, "volume", ["bag"], liftedLimits);
  const { moist, wet } = densitiesOf(given, material, ["material"]);
  given.done();
  const mass = (density: number): Mass => quantity(m3 * density, massDimension);
  const range = ({ low, likely, high }: Three): Range<Mass> => ({
    low: mass(low),
    likely: mass(likely),
    high: mass(high),
    basis: sourcesOf(material.source),
  });
  const because = `a bag of ${material.material}`;
  return {
    moist: range(moist),
    wet: range(wet),
    // A lift over 10 t is no lift; the caution is the same for all that is too heavy.
    cautions: cautionsForLift(mass(Math.min(moist.high, 10_000 / m3)), { because }),
  };
}
