import type { BedShare } from "../cost/index.ts";
import { type Area, squareMetre, sumOf, times } from "../measure/index.ts";
import { bedInside } from "../soil/index.ts";
import type { Bed } from "./bed.ts";

/** Inside area of each bed, and of all. */
export function bedAreas(beds: readonly Bed[]): {
  readonly beds: readonly { readonly bed: string; readonly area: Area }[];
  readonly area: Area;
  readonly shares: readonly BedShare[];
} {
  const areas = beds.map((bed) => ({ bed: bed.name, area: bedInside(bed).area }));
  return {
    beds: areas,
    area: sumOf(
      areas.map(({ area }) => area),
      times(squareMetre, 0),
    ),
    shares: areas.map(({ bed, area }) => ({ bed, share: area.si })),
  };
}
