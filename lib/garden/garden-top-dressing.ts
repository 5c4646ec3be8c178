import { requireRecord } from "../check/index.ts";
import { type TopDressing, topDressing } from "../compost/index.ts";
import type { VolumeNeed } from "../cost/index.ts";
import {
  Checks,
  cubicMetre,
  foot,
  inch,
  type Length,
  litre,
  times,
  type Volume,
} from "../measure/index.ts";
import type { SoilMaterial } from "../soil/index.ts";
import type { Bed } from "./bed.ts";
import { bedAreas } from "./beds-area.ts";
import { requireBeds, requireMaterial } from "./checks.ts";
import { moistDensity } from "./garden-fill.ts";
import { nothing, noVolume } from "./table-cells.ts";

/** How the beds are dressed. */
export interface TopDressingChoices {
  /** Its row of the table of materials. */
  readonly material: SoilMaterial;
  /** Default: 1 in. */
  readonly depth?: Length;
  /** Finished compost on the own heap. Default: none. */
  readonly heap?: Volume;
  /** As the price list calls it. Default: the material's name. */
  readonly item?: string;
}

/** The compost that dresses all beds. */
export interface GardenTopDressing extends TopDressing {
  readonly beds: readonly { readonly bed: string; readonly volume: Volume }[];
  readonly needs: readonly VolumeNeed[];
}

/**
 * The compost that dresses all beds to a depth, with what the own heap gives taken off.
 *
 * @param beds complete beds
 * @param choices `material`; `depth`, 0 to 20 ft, default 1 in; `heap`, default none; `item`
 * @throws ProblemError where a value is of another kind or out of its range
 * @rule inside area of all beds x depth, less the heap
 * @source common practice
 * @example
 * const compost = published.materials.find((row) => row.material === "compost");
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot) });
 * gardenTopDressing([bed], { material: compost }).toBuy // => 2.42 cu ft
 */
export function gardenTopDressing(
  beds: readonly Bed[],
  choices: TopDressingChoices,
): GardenTopDressing {
  requireBeds(beds);
  requireRecord(choices, ["choices"]);
  const { material, depth = inch, heap = times(litre, 0), item = material.material } = choices;
  requireMaterial(material, ["choices", "material"]);
  new Checks()
    .quantity(depth, "length", ["choices", "depth"], { min: nothing, max: times(20, foot) })
    .quantity(heap, "volume", ["choices", "heap"], { min: noVolume, max: times(1e6, cubicMetre) })
    .text(item, ["choices", "item"])
    .done();
  const { beds: areas, area, shares } = bedAreas(beds);
  const dressing = topDressing(area, { depth, onHand: heap });
  const need: VolumeNeed = {
    kind: "volume",
    item,
    use: "top-dressing",
    volume: dressing.toBuy,
    density: moistDensity(material),
    shares,
  };
  return {
    ...dressing,
    beds: areas.map(({ bed, area: inside }) => ({ bed, volume: times(inside, depth) })),
    needs: [need],
  };
}
