import type { Given } from "../measure/given.ts";
import { type Length, lengthDimension, quantity } from "../measure/index.ts";
import { depthLimits } from "./limits.ts";
import { type Rotting, type RottingMaterial, rottingOf } from "./rotting-material.ts";

/** What lies in a bed, or is put into it. */
export interface SoilLayer {
  readonly material: RottingMaterial;
  /** As laid loose, 0 to 20 ft; of a `settled` layer as it lies. */
  readonly depth: Length;
  /** Whether it has settled, as soil that has long been there. Default no. */
  readonly settled?: boolean;
  /** Whole months since it was laid, 0 to 1,200; default 0. */
  readonly age?: number;
  /** What is left of its organic matter by pool of the model, shares of what it began with. */
  readonly left?: readonly number[];
}

/** The same in plain numbers. */
export interface PlainLayer {
  readonly of: number;
  readonly depthM: number;
  readonly settled: boolean;
  readonly age: number;
  readonly left: readonly number[] | undefined;
}

/** The materials of some layers, each once, with their figures. */
export class Materials {
  readonly rows: RottingMaterial[] = [];
  readonly figures: Rotting[] = [];
  private readonly given: Given;

  constructor(given: Given) {
    this.given = given;
  }

  /** The place of a material among all. */
  placeOf(material: unknown, path: readonly (string | number)[]): number {
    const known = this.rows.indexOf(material as RottingMaterial);
    if (known >= 0) return known;
    this.figures.push(rottingOf(this.given, material, path));
    return this.rows.push(material as RottingMaterial) - 1;
  }
}

/** Layers, checked; `pools` is how many the model has. */
export function layersOf(
  given: Given,
  layers: unknown,
  { materials, pools }: { readonly materials: Materials; readonly pools: number },
): readonly PlainLayer[] {
  return given.list(layers, ["layers"], 1).map((layer, at) => {
    const path = ["layers", at + 1];
    const row = given.fields(layer, path);
    return {
      of: materials.placeOf(row.material, [...path, "material"]),
      depthM: given.si(row.depth, "length", [...path, "depth"], depthLimits),
      settled: given.oneOf(row.settled ?? false, [true, false], [...path, "settled"]),
      age: given.whole(row.age ?? 0, [...path, "age"], { min: 0, max: 1200 }),
      left: row.left === undefined ? undefined : leftOf(given, row.left, { path, pools }),
    };
  });
}

function leftOf(
  given: Given,
  left: unknown,
  { path, pools }: { readonly path: readonly (string | number)[]; readonly pools: number },
): readonly number[] {
  const list = given.list(left, [...path, "left"]);
  if (list.length !== pools) {
    given.add({
      code: "contradiction",
      path: [...path, "left"],
      allowed: `${pools} shares, one for each pool of the model`,
      received: `${list.length} shares`,
      remedy: "Go on with the model that gave the layers, or leave the shares out.",
    });
  }
  return list.map((share, at) =>
    given.plain(share, [...path, "left", at + 1], { min: 0, max: 1.000001 }),
  );
}

export const metres = (m: number): Length => quantity(m, lengthDimension);
