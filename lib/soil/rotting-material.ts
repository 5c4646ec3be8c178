import type { Given } from "../measure/given.ts";
import { settlingShares } from "./settling-order.ts";
import type { SoilMaterial } from "./soil-blend.ts";
import { densitiesOf, type Three } from "./soil-mass.ts";

/** A material with what in it is organic and how fast that rots: a row of the table of materials. */
export interface RottingMaterial extends SoilMaterial {
  /** Share of the dry mass that is organic matter, 0 to 1. */
  readonly organicLow: number;
  readonly organic: number;
  readonly organicHigh: number;
  /** Share of the loose volume that is organic material, 0 to 1: compost 1, topsoil 0. */
  readonly organicVolume: number;
  /** Share of the loose volume that is pores, 0 to 1. */
  readonly porosity: number;
  /** Share of the organic matter that rots in a year at about 10 °C, as a rate, 0 to 5. */
  readonly decayLow: number;
  readonly decay: number;
  readonly decayHigh: number;
  readonly organicSource: string;
  readonly decaySource: string;
}

/** The figures of such a row as plain numbers, densities in kg/m3. */
export interface Rotting {
  readonly settle: Three;
  readonly dry: Three;
  readonly organic: Three;
  readonly decay: Three;
  readonly organicVolume: number;
  readonly porosity: number;
}

const share = { min: 0, max: 1 };
export const rateLimits = { min: 0, max: 5 };

/** The figures of a row, checked. */
export function rottingOf(
  given: Given,
  material: unknown,
  path: readonly (string | number)[],
): Rotting {
  const row = given.fields(material, path);
  const three = (name: "organic" | "decay", bounds: typeof share): Three => {
    const found = {
      low: given.plain(row[`${name}Low`], [...path, `${name}Low`], bounds),
      likely: given.plain(row[name], [...path, name], bounds),
      high: given.plain(row[`${name}High`], [...path, `${name}High`], bounds),
    };
    if (given.clean && !(found.low <= found.likely && found.likely <= found.high)) {
      given.add({
        code: "contradiction",
        path: [...path, name],
        allowed: `figures that rise from ${name}Low over ${name} to ${name}High`,
        received: `${found.low}, ${found.likely}, ${found.high}`,
        remedy: "Put the three figures in order.",
      });
    }
    return found;
  };
  return {
    settle: settlingShares(given, material as SoilMaterial, path),
    dry: densitiesOf(given, material as SoilMaterial, path).dry,
    organic: three("organic", share),
    decay: three("decay", rateLimits),
    organicVolume: given.plain(row.organicVolume, [...path, "organicVolume"], share),
    porosity: given.plain(row.porosity, [...path, "porosity"], share),
  };
}
