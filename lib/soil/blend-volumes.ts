import { Given } from "../measure/given.ts";
import { quantity, type Volume, volumeDimension } from "../measure/index.ts";
import { partLimits, volumeLimits } from "./limits.ts";

/** How much of one part goes into a blend. */
export interface BlendVolume {
  readonly material: string;
  readonly volume: Volume;
}

/**
 * How much of each part makes a volume of a blend.
 *
 * @param volume of the blend, loose, 0 to 1,000,000 m3.
 * @param parts one or more with `material` (its name, or a row) and `share`, parts by loose volume.
 * @throws ProblemError where there is no part, or the volume or a share is missing, of another kind
 * or out of range.
 * @rule part's volume = volume x part's share / sum of shares
 * @source common practice
 * @example
 * const parts = [{ material: "topsoil", share: 2 }, { material: "compost", share: 1 }];
 * blendVolumes(times(9, cubicFoot), parts)[1].volume // => 3 cu ft
 */
export function blendVolumes(
  volume: Volume,
  parts: readonly {
    readonly material: string | { readonly material: string };
    readonly share: number;
  }[],
): readonly BlendVolume[] {
  const given = new Given();
  const m3 = given.si(volume, "volume", ["volume"], volumeLimits);
  const rows = given.list(parts, ["parts"], 1).map((part, at) => {
    const path = ["parts", at + 1];
    const { material, share } = given.fields(part, path);
    const name = isRow(material) ? material.material : material;
    return {
      material: given.name(name, [...path, "material"]),
      share: given.plain(share, [...path, "share"], partLimits),
    };
  });
  given.done();
  const total = rows.reduce((sum, { share }) => sum + share, 0);
  return rows.map(({ material, share }) => ({
    material,
    volume: quantity((m3 * share) / total, volumeDimension),
  }));
}

const isRow = (value: unknown): value is { readonly material: unknown } =>
  typeof value === "object" && value !== null && "material" in value;
