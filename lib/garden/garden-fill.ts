import type { BedShare, VolumeNeed } from "../cost/index.ts";
import { Checks, type Range, type Volume } from "../measure/index.ts";
import {
  type BedFill,
  type BlendVolume,
  bedFill,
  blendVolumes,
  type SoilMaterial,
  soilBlend,
  type TotalFill,
  totalFill,
} from "../soil/index.ts";
import type { Bed } from "./bed.ts";
import { optionalText, requireBeds } from "./checks.ts";

/** One part of what the beds are filled with. */
export interface FillPart {
  /** Its row of the table of materials. */
  readonly material: SoilMaterial;
  /** Parts by loose volume, over 0. */
  readonly share: number;
  /** As the price list calls it. Default: the material's name. */
  readonly item?: string;
}

/** What filling the beds takes. */
export interface GardenFill {
  /** One row for each bed. */
  readonly beds: readonly (BedFill & { readonly bed: string })[];
  readonly total: TotalFill;
  /** The blend as one material. */
  readonly material: SoilMaterial;
  /** What to order of each part, likely. */
  readonly parts: readonly BlendVolume[];
  readonly needs: readonly VolumeNeed[];
}

/**
 * What to order so that every bed settles to the depth wanted, over what is there: by bed, in all,
 * and by part of the mix.
 *
 * @param beds complete beds
 * @param parts what the beds are filled with: rows of the table of materials with their shares
 * @throws ProblemError where there is no part, or a row lacks a figure
 * @rule in each bed: missing = inside area x (depth wanted - depth there); to order = missing / (1 - share lost in settling)
 * @source common practice
 * @example
 * const soil = published.materials.find((row) => row.material === "topsoil");
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot), soilDepth: inch });
 * gardenFill([bed], [{ material: soil, share: 1 }]).total.settled // => 2.42 cu ft
 */
export function gardenFill(beds: readonly Bed[], parts: readonly FillPart[]): GardenFill {
  requireBeds(beds);
  const material = soilBlend(parts);
  const checks = new Checks();
  parts.forEach(({ item }, at) => {
    optionalText(checks, item, ["parts", at + 1, "item"]);
  });
  checks.done();
  const fills = beds.map((bed) => ({
    bed: bed.name,
    ...bedFill(bed, material, { depth: bed.soilDepth, depthNow: bed.depthNow }),
  }));
  const total = totalFill(fills);
  const volumes = blendVolumes(total.order.likely, parts);
  const shares = fills.map(({ bed, order }): BedShare => ({ bed, share: order.likely.si }));
  const needs = parts.map((part, place): VolumeNeed => {
    const volume: Volume = volumes[place]?.volume ?? total.order.likely;
    return {
      kind: "volume",
      item: part.item ?? part.material.material,
      use: "fill",
      volume,
      density: moistDensity(part.material),
      shares,
    };
  });
  return { beds: fills, total, material, parts: volumes, needs };
}

/** What a material weighs as it is sold. */
export function moistDensity(row: SoilMaterial): Range<SoilMaterial["densityMoist"]> {
  return {
    low: row.densityMoistLow,
    likely: row.densityMoist,
    high: row.densityMoistHigh,
    basis: [row.source],
  };
}
