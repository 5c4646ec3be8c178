import { requireRecord } from "../check/index.ts";
import type { VolumeNeed } from "../cost/index.ts";
import { Checks, foot, inch, type Length, times, type Volume } from "../measure/index.ts";
import { type MulchCover, mulchCover } from "../mulch/index.ts";
import type { SoilMaterial } from "../soil/index.ts";
import type { Bed } from "./bed.ts";
import { bedAreas } from "./beds-area.ts";
import { requireBeds, requireMaterial } from "./checks.ts";
import { moistDensity } from "./garden-fill.ts";
import { nothing } from "./table-cells.ts";

/** How the beds are mulched. */
export interface MulchChoices {
  /** Its row of the table of materials. */
  readonly material: SoilMaterial;
  /** Default: 1 in. */
  readonly depth?: Length;
  /** As the price list calls it. Default: the material's name. */
  readonly item?: string;
}

/** The mulch that covers all beds. */
export interface GardenMulch extends MulchCover {
  readonly beds: readonly { readonly bed: string; readonly volume: Volume }[];
  readonly needs: readonly VolumeNeed[];
}

/**
 * The mulch that covers all beds to a depth.
 *
 * @param beds complete beds
 * @param choices `material`; `depth`, 0 to 20 ft, default 1 in; `item`
 * @throws ProblemError where a value is of another kind or out of its range
 * @rule inside area of all beds x depth
 * @source common practice
 * @example
 * const bark = published.materials.find((row) => row.material === "pine bark");
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot) });
 * gardenMulch([bed], { material: bark }).volume // => 2.42 cu ft
 */
export function gardenMulch(beds: readonly Bed[], choices: MulchChoices): GardenMulch {
  requireBeds(beds);
  requireRecord(choices, ["choices"]);
  const { material, depth = inch, item = material.material } = choices;
  requireMaterial(material, ["choices", "material"]);
  new Checks()
    .quantity(depth, "length", ["choices", "depth"], { min: nothing, max: times(20, foot) })
    .text(item, ["choices", "item"])
    .done();
  const { beds: areas, area, shares } = bedAreas(beds);
  const cover = mulchCover(area, { depth });
  const need: VolumeNeed = {
    kind: "volume",
    item,
    use: "mulch",
    volume: cover.volume,
    density: moistDensity(material),
    shares,
  };
  return {
    ...cover,
    beds: areas.map(({ bed, area: inside }) => ({ bed, volume: times(inside, depth) })),
    needs: [need],
  };
}
