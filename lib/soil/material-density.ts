import { Given } from "../measure/given.ts";
import { type Density, densityDimension, quantity, type Range } from "../measure/index.ts";
import { densitiesOf, type WeighedMaterial } from "./soil-mass.ts";
import { sourcesOf } from "./sources.ts";

/** Dry, moist as it is sold and carried, or wet after rain. */
export type Moisture = "dry" | "moist" | "wet";

/**
 * The bulk density of a material in a state of moisture, as a range with what it rests on: for what
 * a car carries, or a bag sold by mass holds.
 *
 * @param material a row with three densities (low, likely, high) for each state, 1 to 5000 kg/m3.
 * @param options `state`: `dry`, `moist` or `wet`; default `moist`.
 * @throws ProblemError where a density is missing, of another kind or out of range, the densities of
 * a state do not rise from low to high (`contradiction`), or the state is not one of the three.
 * @rule the row's three densities of that state
 * @source common practice
 * @example
 * const d = (value) => times(value, kilogramPerCubicMetre);
 * const soil = {
 *   material: "topsoil", source: "calrecycle-calculations",
 *   densityDryLow: d(1100), densityDry: d(1246), densityDryHigh: d(1500),
 *   densityMoistLow: d(1187), densityMoist: d(1305), densityMoistHigh: d(1602),
 *   densityWetLow: d(1602), densityWet: d(1780), densityWetHigh: d(1851),
 * };
 * amount(materialDensity(soil, { state: "wet" }).likely, kilogramPerCubicMetre) // => 1780
 */
export function materialDensity(
  material: WeighedMaterial,
  options: { readonly state?: Moisture } = {},
): Range<Density> {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const densities = densitiesOf(given, material, ["material"]);
  const state = given.oneOf(chosen.state ?? "moist", ["dry", "moist", "wet"], ["state"]);
  given.done();
  const { low, likely, high } = densities[state];
  return {
    low: quantity(low, densityDimension),
    likely: quantity(likely, densityDimension),
    high: quantity(high, densityDimension),
    basis: sourcesOf(material.source),
  };
}
