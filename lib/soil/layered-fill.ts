import { Given } from "../measure/given.ts";
import { type Length, lengthDimension, quantity } from "../measure/index.ts";
import { type BedFill, bedFill } from "./bed-fill.ts";
import { type BedSides, insideM } from "./bed-inside.ts";
import { countLimits, depthLimits } from "./limits.ts";
import { type SettlingMaterial, settlingShares } from "./settling-order.ts";
import { type TotalFill, totalFill } from "./total-fill.ts";

/** One layer: a material and its settled thickness, 0 to 20 ft. */
export interface FillLayer {
  readonly material: SettlingMaterial;
  readonly thickness: Length;
}

/** What the layers lie on, and in how many beds. */
export interface LayeredFillOptions {
  /** Depth there now, settled, 0 to 20 ft; default none. The layers come on top of it. */
  readonly depthNow?: Length;
  /** How many beds alike, 1 to 100,000; default 1. */
  readonly count?: number;
}

/** What to order for each layer, and for all. */
export interface LayeredFill {
  /** From the lowest up, as given. */
  readonly layers: readonly { readonly material: string; readonly fill: BedFill }[];
  /** Settled depth in the end. */
  readonly depth: Length;
  readonly total: TotalFill;
}

/**
 * What to order for a bed that is filled in layers of different materials, each so that it settles
 * to its thickness. Layers are taken not to sink into each other.
 *
 * @param bed outside length and width, 4 in to 1000 ft, and `section.thickness`, 0 to 1 ft.
 * @param layers one or more from the lowest up: `material`, a row with its settling shares, and
 * settled `thickness`, 0 to 20 ft.
 * @param options `depthNow` below the layers, 0 to 20 ft, default none; `count` of beds alike, 1 to
 * 100,000, default 1.
 * @throws ProblemError naming every field that is missing, of another kind or out of range; where
 * layers and what is there are together over 20 ft (`too-large`).
 * @rule each layer's order = inside area x thickness / (1 - share lost in settling)
 * @source common practice
 * @example
 * const bed = { length: times(99, inch), width: times(51, inch), section: { thickness: times(1.5, inch) } };
 * const row = (material, share) => ({ material, settleLow: share, settleLikely: share, settleHigh: share, settleSource: "common practice" });
 * const fill = layeredFill(bed, [
 *   { material: row("wood chips", 0.2), thickness: times(3, inch) },
 *   { material: row("topsoil", 0), thickness: times(6, inch) },
 * ]);
 * fill.layers[0].fill.order.likely // => 10 cu ft
 * fill.depth // => 9 in
 */
export function layeredFill(
  bed: BedSides,
  layers: readonly FillLayer[],
  options: LayeredFillOptions = {},
): LayeredFill {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  insideM(given, bed, ["bed"]);
  const nowM = given.si(chosen.depthNow ?? depthLimits.min, "length", ["depthNow"], depthLimits);
  const count = given.whole(chosen.count ?? 1, ["count"], countLimits);
  const thicknessesM = given.list(layers, ["layers"], 1).map((layer, at) => {
    const path = ["layers", at + 1, "thickness"];
    const { thickness, material } = given.fields(layer, ["layers", at + 1]);
    settlingShares(given, material as SettlingMaterial, ["layers", at + 1, "material"]);
    return given.si(thickness, "length", path, depthLimits);
  });
  given.done();

  let belowM = nowM;
  const filled = thicknessesM.map((thicknessM, at) => {
    const depthNow = quantity(belowM, lengthDimension);
    belowM += thicknessM;
    const depth = quantity(belowM, lengthDimension);
    const material = layers[at]?.material as SettlingMaterial;
    const fill = given.attempt(() => bedFill(bed, material, { depth, depthNow, count }));
    return fill === undefined ? [] : [{ material: material.material, fill }];
  });
  given.done();
  const found = filled.flat();
  const fills = found.map(({ fill }) => fill);
  const total = totalFill(fills);
  return {
    layers: found,
    depth: quantity(belowM, lengthDimension),
    total: { ...total, ...ofOneBed(fills) },
  };
}

/** The layers lie over the same area and the same soil: these are not added up. */
function ofOneBed(fills: readonly BedFill[]): Partial<TotalFill> {
  const [lowest] = fills;
  return lowest === undefined ? {} : { area: lowest.area, there: lowest.there };
}
