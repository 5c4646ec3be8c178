import type { Volume } from "../measure/index.ts";
import { Given } from "./given.ts";
import { volumeLimits } from "./limits.ts";
import { volumeOf } from "./si.ts";

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
 * blendVolumes(times(9, cubicFoot), parts)[1].volume // => 3 ft³
 */
export function blendVolumes(
  volume: Volume,
  parts: readonly {
    readonly material: string | { readonly material: string };
    readonly share: number;
  }[],
): readonly BlendVolume[] {
  const given = new Given();
  const m3 = given.volume(volume, ["volume"], volumeLimits);
  const shares = given.list(parts, ["parts"]).map((part, at) =>
    given.number(given.record(part, ["parts", at + 1]).share, ["parts", at + 1, "share"], {
      min: 1e-6,
      max: 1e6,
      words: "parts by volume from 0.000001 to 1,000,000",
    }),
  );
  given.done();
  const total = shares.reduce((sum, share) => sum + share, 0);
  return parts.map(({ material, share }) => ({
    material: typeof material === "string" ? material : material.material,
    volume: volumeOf((m3 * share) / total),
  }));
}
