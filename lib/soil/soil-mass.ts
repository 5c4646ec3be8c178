import { Given } from "../measure/given.ts";
import {
  type Density,
  type Mass,
  massDimension,
  quantity,
  type Range,
  type Volume,
} from "../measure/index.ts";
import { densityLimits, volumeLimits } from "./limits.ts";
import { sourcesOf } from "./sources.ts";

/** What a loose volume of a material weighs dry, as it is sold (moist), and soaked (wet). */
export interface WeighedMaterial {
  readonly material: string;
  readonly densityDryLow: Density;
  readonly densityDry: Density;
  readonly densityDryHigh: Density;
  readonly densityMoistLow: Density;
  readonly densityMoist: Density;
  readonly densityMoistHigh: Density;
  readonly densityWetLow: Density;
  readonly densityWet: Density;
  readonly densityWetHigh: Density;
  /** Source id of the densities. */
  readonly source: string;
}

/** A mass for each state of moisture. */
export interface SoilMass {
  readonly dry: Range<Mass>;
  readonly moist: Range<Mass>;
  readonly wet: Range<Mass>;
}

/**
 * The mass of a loose volume of a material: dry, moist as it is sold and carried, and wet after
 * rain or watering.
 *
 * @param volume loose, 0 to 1,000,000 m3.
 * @param material a row with three densities (low, likely, high) for each state, 1 to 5000 kg/m3.
 * @throws ProblemError where the volume or a density is missing, of another kind or out of range,
 * or where the densities of a state do not rise from low to high (`contradiction`).
 * @rule mass = volume x bulk density
 * @source common practice
 * @example
 * const d = (value) => times(value, kilogramPerCubicMetre);
 * const soil = {
 *   material: "topsoil", source: "calrecycle-calculations",
 *   densityDryLow: d(1100), densityDry: d(1246), densityDryHigh: d(1500),
 *   densityMoistLow: d(1187), densityMoist: d(1305), densityMoistHigh: d(1602),
 *   densityWetLow: d(1602), densityWet: d(1780), densityWetHigh: d(1851),
 * };
 * soilMass(cubicYard, soil).moist.likely // => 2,200 lb
 */
export function soilMass(volume: Volume, material: WeighedMaterial): SoilMass {
  const given = new Given();
  const m3 = given.si(volume, "volume", ["volume"], volumeLimits);
  const densities = densitiesOf(given, material, ["material"]);
  given.done();
  const mass = ({ low, likely, high }: Three): Range<Mass> => ({
    low: quantity(m3 * low, massDimension),
    likely: quantity(m3 * likely, massDimension),
    high: quantity(m3 * high, massDimension),
    basis: sourcesOf(material.source),
  });
  return { dry: mass(densities.dry), moist: mass(densities.moist), wet: mass(densities.wet) };
}

export interface Three {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** The nine densities of a row in kg/m3, checked. */
export function densitiesOf(
  given: Given,
  material: WeighedMaterial,
  path: readonly (string | number)[],
): { dry: Three; moist: Three; wet: Three } {
  const row = given.fields(material, path);
  const one = (name: string): number =>
    given.si(row[name], "density", [...path, name], densityLimits);
  const three = (name: string): Three => {
    const found = { low: one(`${name}Low`), likely: one(name), high: one(`${name}High`) };
    if (given.clean && !(found.low <= found.likely && found.likely <= found.high)) {
      given.add({
        code: "contradiction",
        path: [...path, name],
        allowed: `densities that rise from ${name}Low over ${name} to ${name}High`,
        received: `${found.low}, ${found.likely}, ${found.high} kg/m3`,
        remedy: "Put the three densities in order.",
      });
    }
    return found;
  };
  return { dry: three("densityDry"), moist: three("densityMoist"), wet: three("densityWet") };
}
