import { requireRecord } from "../check/index.ts";
import { Checks, type Density, densityDimension, quantity } from "../measure/index.ts";

/** What of a species its mass follows from. */
export interface WoodSpecies {
  readonly species: string;
  /** Specific gravity: mass oven-dry over volume green, against water. */
  readonly specificGravity: number;
}

/** Above this moisture wood neither swells nor shrinks. */
export const FIBRE_SATURATION = 0.3;

const waterKgPerM3 = 1000;
// Wood Handbook: volumetric shrinkage from green to oven-dry, per unit of specific gravity.
const shrinkagePerGravity = 0.265;

export function checkSpecies(checks: Checks, species: WoodSpecies, moisture: unknown): Checks {
  checks.attempt(() => requireRecord(species, ["species"]));
  return checks
    .number(species?.specificGravity, ["species", "specificGravity"], { min: 0.05, max: 1.4 })
    .number(moisture, ["moisture"], { min: 0, max: 3 });
}

/**
 * Density of wood at a moisture content. The wood takes up less room as it dries below fibre
 * saturation (30 %), which is reckoned with.
 *
 * @param species a row of `published.species`, or any with its specific gravity (0.05 to 1.4)
 * @param options `moisture`: mass of water over mass of oven-dry wood, 0 to 3, as 0.19 for 19 %
 * @throws ProblemError where a value is missing or out of range
 * @rule Water's density x G x (1 + moisture), with G = basic specific gravity / (1 - shrinkage), and shrinkage = 0.265 x basic specific gravity x (0.30 - moisture) / 0.30.
 * @source gtr-190
 * @example
 * printQuantity(woodDensity({ species: "white ash", specificGravity: 0.55 }, { moisture: 0.12 }), { system: "metric" }) // => "675 kg/m³"
 */
export function woodDensity(species: WoodSpecies, options: { readonly moisture: number }): Density {
  requireRecord(options, ["options"]);
  checkSpecies(new Checks(), species, options.moisture).done();
  const { specificGravity } = species;
  const { moisture } = options;
  const dried = Math.max(0, FIBRE_SATURATION - moisture) / FIBRE_SATURATION;
  const shrunk = shrinkagePerGravity * specificGravity * dried;
  return quantity(
    (waterKgPerM3 * specificGravity * (1 + moisture)) / (1 - shrunk),
    densityDimension,
  );
}
