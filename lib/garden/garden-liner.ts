import { type Caution, requireRecord } from "../check/index.ts";
import type { BedShare, Need, PriceLine } from "../cost/index.ts";
import {
  bedFloor,
  type FloorKind,
  type LinedBed,
  type LinerCutting,
  type LinerPlan,
  linerForBeds,
} from "../liner/index.ts";
import {
  type Area,
  Checks,
  foot,
  type Length,
  squareMetre,
  sumOf,
  times,
} from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import { alikeBeds } from "./alike-beds.ts";
import type { Bed } from "./bed.ts";
import { cheapestRoll } from "./cheapest-roll.ts";
import { optionalText, requireBeds } from "./checks.ts";
import { priceRows } from "./shapes.ts";

/** How beds are lined. */
export interface LinerChoices extends LinerCutting {
  /** The roll reckoned with where none is priced. Default: 6 ft x 100 ft. */
  readonly roll?: { readonly width: Length; readonly length: Length };
  /** Default: 12 in. */
  readonly stapleSpacing?: Length;
  /** What lies under the soil. Default: `open`, nothing. */
  readonly floor?: FloorKind;
  /** As the price list calls them. Defaults: `liner`, `staples`, and `liner` or `wire mesh`. */
  readonly item?: string;
  readonly stapleItem?: string;
  readonly floorItem?: string;
  /** Where rolls are sold. Default: nowhere. */
  readonly prices?: readonly PriceLine[];
}

/** The liner of the beds that are lined. */
export interface GardenLiner extends LinerPlan {
  /** The roll it is cut from, as reckoned here: the one that costs least for all. */
  readonly roll: { readonly width: Length; readonly length: Length };
  readonly lined: readonly string[];
  /** Of the floors; zero where they are open. */
  readonly floorArea: Area;
  readonly needs: readonly Need[];
  readonly cautions: readonly Caution[];
}

/**
 * The liner of all beds that have one: strips, rolls, laps, staples, and a floor where one is asked
 * for.
 *
 * @param beds complete beds
 * @param choices all with defaults
 * @throws ProblemError where a value is out of its range or no roll is wide enough
 * @rule sheet of a bed = inside perimeter + one lap a join, as high as the wall and both turns; the priced roll that costs least
 * @source common practice
 * @example
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot) });
 * gardenLiner([bed]).rolls // => 1
 */
export function gardenLiner(beds: readonly Bed[], choices: LinerChoices = {}): GardenLiner {
  requireBeds(beds);
  requireRecord(choices, ["choices"]);
  const { roll, stapleSpacing = foot, floor = "open", item = "liner", ...rest } = choices;
  const { stapleItem = "staples", floorItem, prices = [], ...strip } = rest;
  requireShape(prices, priceRows, ["choices", "prices"]);
  const checks = new Checks()
    .choice(floor, ["open", "sheet", "mesh"], ["choices", "floor"])
    .choice(strip.cutAlong ?? false, [true, false], ["choices", "cutAlong"])
    .text(item, ["choices", "item"])
    .text(stapleItem, ["choices", "stapleItem"]);
  optionalText(checks, floorItem, ["choices", "floorItem"]);
  checks.done();
  const linedBeds = beds.filter((bed) => bed.liner);
  const groups: LinedBed[] = alikeBeds(linedBeds).map(({ bed, names }) => ({
    length: bed.length,
    width: bed.width,
    courses: bed.courses,
    section: bed.section,
    name: names.join(", "),
    count: names.length,
  }));
  const usual = roll ?? { width: times(foot, 6), length: times(foot, 100) };
  const lining: Need = {
    kind: "lining",
    item,
    use: "liner",
    beds: groups,
    strip,
    shares: linedBeds.map((bed): BedShare => ({ bed: bed.name, share: sheetOf(bed) })),
  };
  const taken = cheapestRoll(lining, prices) ?? usual;
  const plan = linerForBeds(groups, { ...strip, roll: taken, stapleSpacing });
  const floors = floorNeed(beds, floor, floorItem ?? (floor === "mesh" ? "wire mesh" : item));
  const staples: Need = {
    kind: "count",
    item: stapleItem,
    use: "liner",
    count: plan.staples,
    shares: linedBeds.map((bed) => ({ bed: bed.name, share: bed.length.si + bed.width.si })),
  };
  return {
    ...plan,
    roll: { width: taken.width, length: taken.length },
    lined: linedBeds.map((bed) => bed.name),
    floorArea: floors.area,
    needs: [...(linedBeds.length > 0 ? [lining, staples] : []), ...floors.needs],
  };
}

/** Sheet a bed takes, as a weight. */
function sheetOf(bed: Bed): number {
  return (bed.length.si + bed.width.si) * bed.wallHeight.si;
}

function floorNeed(
  beds: readonly Bed[],
  floor: FloorKind,
  item: string,
): { readonly area: Area; readonly needs: readonly Need[] } {
  const none = times(squareMetre, 0);
  if (floor === "open" || beds.length === 0) return { area: none, needs: [] };
  const roll = { width: times(foot, 4), length: times(foot, 25) };
  const areas = beds.map((bed) => ({
    bed: bed.name,
    area: bedFloor(bed, { kind: floor, roll }).area,
  }));
  const groups = alikeBeds(beds).map(({ bed, names }): LinedBed => {
    const { length, width, courses, section } = bed;
    return { length, width, courses, section, count: names.length };
  });
  const need: Need = {
    kind: "floor",
    item,
    use: "floor",
    floor,
    beds: groups,
    shares: areas.map(({ bed, area }) => ({ bed, share: area.si })),
  };
  return {
    area: sumOf(
      areas.map(({ area }) => area),
      none,
    ),
    needs: [need],
  };
}
