import { Given } from "../measure/given.ts";
import { type Length, lengthDimension, quantity, type Range } from "../measure/index.ts";
import { depthLimits } from "./limits.ts";
import type { RottingMaterial } from "./rotting-material.ts";
import type { SoilLayer } from "./soil-layer.ts";
import { type SoilYears, type SoilYearsOptions, soilYears } from "./soil-years.ts";

/** What is to be held. */
export interface UpkeepOptions extends Omit<SoilYearsOptions, "springs"> {
  /** What is spread each spring. */
  readonly material: RottingMaterial;
  /** Settled depth to hold, 0 to 20 ft; or `organic`. */
  readonly depth?: Length;
  /** Share of the dry mass to hold organic, 0 to 0.9, at the end of the years. */
  readonly organic?: number;
}

/** The dressing that holds it. */
export interface UpkeepDressing {
  /** Loose, each spring. */
  readonly each: Range<Length>;
  /** Whether so much holds it: no dressing brings a soil above the organic share of what is spread. */
  readonly holds: boolean;
}

/** More than this each spring is no upkeep. */
const mostM = 0.3;

/**
 * The even dressing, the same each spring, after which a bed has a wanted depth, or a wanted share of
 * organic matter, in the spring at the end of the years. The range follows the range of what it is
 * reckoned from.
 *
 * @param layers what the bed holds, as for `soilYears`.
 * @param options `material`; `depth` or `organic` to hold; `years` and the rest as for `soilYears`.
 * @throws ProblemError where a field is missing, of another kind or out of range, or where both or
 * neither of `depth` and `organic` are given (`contradiction`).
 * @rule the dressing at which the depth, or the organic share, at the end is the one wanted, found by straight lines; at most a foot each spring
 * @source common practice
 * @example
 * const row = (name) => published.materials.find((each) => each.material === name);
 * const bed = [{ material: row("planting mix"), depth: times(10, inch) }];
 * const held = upkeepDressing(bed, { material: row("compost"), depth: times(9, inch) });
 * held.holds // => true
 */
export function upkeepDressing(
  layers: readonly SoilLayer[],
  options: UpkeepOptions,
): UpkeepDressing {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  given.done();
  const { material, depth, organic, ...rest } = options;
  if ((chosen.depth === undefined) === (chosen.organic === undefined)) {
    given.add({
      code: "contradiction",
      path: ["options"],
      allowed: "either a depth or an organic share to hold",
      received: chosen.depth === undefined ? "neither" : "both",
      remedy: "Give one of `depth` and `organic`.",
    });
  }
  const wanted =
    chosen.depth === undefined
      ? given.plain(chosen.organic ?? 0, ["organic"], { min: 0, max: 0.9 })
      : given.si(chosen.depth, "length", ["depth"], depthLimits);
  given.done();
  const end = (eachM: number): EndOf => {
    const springs = [{ material, depth: quantity(eachM, lengthDimension) }];
    return endOf(soilYears(layers, { ...rest, springs }), chosen.depth === undefined);
  };
  const [none, most] = [end(0), end(mostM)];
  const find = (key: keyof EndOf): number => {
    if (none[key] >= wanted) return 0;
    if (most[key] < wanted) return mostM;
    return crossing((eachM) => end(eachM)[key] - wanted, none[key] - wanted, most[key] - wanted);
  };
  const length = (m: number): Length => quantity(m, lengthDimension);
  const likely = find("likely");
  const isSure = (rest.draws ?? 0) === 0;
  const [low, high] = isSure ? [likely, likely] : [find("high"), find("low")];
  return {
    each: {
      low: length(Math.min(low, likely)),
      likely: length(likely),
      high: length(Math.max(high, likely)),
      basis: soilYears(layers, { ...rest, years: 1, draws: 0 }).basis,
    },
    holds: most.likely >= wanted,
  };
}

/**
 * Where a function that rises crosses 0 between nothing and the most: by the straight line between two
 * places, kept from creeping by halving what an end that stays is worth (the Illinois rule). A depth
 * rises in a straight line with the dressing, so that two or three steps are enough.
 */
function crossing(over: (eachM: number) => number, atNone: number, atMost: number): number {
  let [a, b] = [0, mostM];
  let [below, above] = [atNone, atMost];
  for (let step = 0; step < 40 && b - a > 1e-7; step += 1) {
    const place = b - (above * (b - a)) / (above - below);
    const value = over(place);
    if (Math.abs(value) < 1e-9) return place;
    if (value > 0) {
      [b, above] = [place, value];
      below /= 2;
    } else {
      [a, below] = [place, value];
      above /= 2;
    }
  }
  return b;
}

interface EndOf {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

function endOf({ months }: SoilYears, isOrganic: boolean): EndOf {
  const last = months.at(-1);
  if (last === undefined) return { low: 0, likely: 0, high: 0 };
  if (isOrganic) return last.organic;
  const { low, likely, high } = last.depth;
  return { low: low.si, likely: likely.si, high: high.si };
}
