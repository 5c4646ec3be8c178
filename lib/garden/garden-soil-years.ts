import { type Caution, requireRecord } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import {
  type Area,
  foot,
  type Length,
  lengthDimension,
  quantity,
  type Range,
  times,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import {
  bedInside,
  type RottingMaterial,
  type RottingPart,
  rottingBlend,
  type SoilLayer,
  type SoilYears,
  type SoilYearsOptions,
  type SpringDressing,
  soilYears,
} from "../soil/index.ts";
import { rottingOf } from "../soil/rotting-material.ts";
import type { Bed } from "./bed.ts";
import { requireBeds } from "./checks.ts";

/** What is put in each spring; one that holds the wanted depth says so. */
export interface GardenSpring extends Omit<SpringDressing, "holds"> {
  /** Fills each bed up to its own wanted depth; default no: then `depth` is put in. */
  readonly holdsWanted?: boolean;
}

/** What fills the beds, what is in them, and what is put in each spring. */
export interface GardenSoilChoices extends Omit<SoilYearsOptions, "springs"> {
  /** What fills up what is missing: parts with their shares of the loose volume. */
  readonly fill: readonly RottingPart[];
  /** What is taken to be in a bed already. */
  readonly there: RottingMaterial;
  /** Coarse wood or the like under the fill, as deep as its settled depth; never more than is missing. */
  readonly bottom?: { readonly material: RottingMaterial; readonly depth: Length };
  readonly springs?: readonly GardenSpring[];
}

/** A bed's soil, with the area it lies over. */
export interface BedSoilYears {
  readonly bed: string;
  readonly area: Area;
  readonly soil: SoilYears;
}

/** What a year takes for all beds. */
export interface GardenSoilYear {
  /** 0 for the year of the filling. */
  readonly year: number;
  readonly added: readonly { readonly material: string; readonly volume: Range<Volume> }[];
}

/** The soil of all beds through the years. */
export interface GardenSoilYears {
  readonly beds: readonly BedSoilYears[];
  readonly years: readonly GardenSoilYear[];
  /** How many of the beds are unlike as far as soil goes: so many were worked out. */
  readonly unlike: number;
  readonly cautions: readonly Caution[];
}

/**
 * The soil of all beds through the years: what is missing is filled, then each settles, rots and is
 * topped up. Beds that are alike in depth are worked out once. The uncertain figures are drawn alike
 * for all beds, since one load of compost goes into many.
 *
 * @param beds complete beds: `depthNow` is what is there, `soilDepth` what is wanted
 * @param choices `fill`, parts with shares; `there`, a row of the table of materials; `springs` and the
 * rest as for `soilYears`
 * @throws ProblemError where a value is of another kind or out of its range
 * @rule each bed as `soilYears`; volumes = sum over the beds of depth x inside area, low with low, high with high
 * @source common practice
 * @example
 * const row = (name) => published.materials.find((each) => each.material === name);
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot) });
 * const compost = { material: row("compost"), depth: inch };
 * const soil = gardenSoilYears([bed], { fill: [{ material: row("topsoil"), share: 1 }], there: row("old bed soil"), springs: [compost] });
 * soil.years[1].added[0].volume.likely // => 2.42 cu ft
 */
export function gardenSoilYears(beds: readonly Bed[], choices: GardenSoilChoices): GardenSoilYears {
  requireBeds(beds);
  requireRecord(choices, ["choices"]);
  const { fill, there, bottom, springs = [], ...options } = choices;
  const given = new Given();
  const list = given.list(springs, ["springs"]) as readonly GardenSpring[];
  list.forEach((spring, at) => {
    const { holdsWanted = false } = given.fields(spring, ["springs", at + 1]);
    given.choice(holdsWanted, [true, false], ["springs", at + 1, "holdsWanted"]);
  });
  given.list(fill, ["choices", "fill"], 1).forEach((part, at) => {
    const path = ["choices", "fill", at + 1];
    const { material, share } = given.fields(part, path);
    given.number(share, [...path, "share"], { min: 1e-6, max: 1e6 });
    rottingOf(given, material, [...path, "material"]);
  });
  rottingOf(given, there, ["choices", "there"]);
  if (bottom !== undefined) {
    const { material, depth } = given.fields(bottom, ["choices", "bottom"]);
    rottingOf(given, material, ["choices", "bottom", "material"]);
    given.quantity(depth, "length", ["choices", "bottom", "depth"], {
      min: quantity(0, lengthDimension),
      max: times(20, foot),
    });
  }
  given.done();
  const settles = rottingBlend(fill).settleLikely;
  const known = new Map<string, SoilYears>();
  const found = beds.map((bed): BedSoilYears => {
    const key = `${bed.depthNow.si.toFixed(6)} ${bed.soilDepth.si.toFixed(6)}`;
    const soil =
      known.get(key) ??
      soilYears(layersOf(bed, { fill, there, bottom, settles }), {
        ...options,
        springs: list.map((spring) => springFor(spring, bed)),
      });
    known.set(key, soil);
    return { bed: bed.name, area: bedInside(bed).area, soil };
  });
  return {
    beds: found,
    years: yearsOf(found),
    unlike: known.size,
    cautions: [...known.values()].flatMap(({ cautions }) => cautions),
  };
}

function layersOf(
  { depthNow, soilDepth }: Bed,
  {
    fill,
    there,
    bottom,
    settles,
  }: Pick<GardenSoilChoices, "fill" | "there"> & {
    readonly bottom: GardenSoilChoices["bottom"] | undefined;
    readonly settles: number;
  },
): readonly SoilLayer[] {
  const lackM = Math.max(0, soilDepth.si - depthNow.si);
  const woodM = Math.min(bottom?.depth.si ?? 0, lackM);
  const missingM = lackM - woodM;
  const total = fill.reduce((sum, part) => sum + part.share, 0);
  const laid = fill.map(({ material, share }) => ({
    material,
    depth: quantity(((missingM / (1 - settles)) * share) / total, lengthDimension),
  }));
  const wood =
    bottom === undefined || woodM === 0
      ? []
      : [
          {
            material: bottom.material,
            depth: quantity(woodM / (1 - bottom.material.settleLikely), lengthDimension),
          },
        ];
  return [{ material: there, depth: depthNow, settled: true }, ...wood, ...laid];
}

function springFor({ holdsWanted = false, ...spring }: GardenSpring, bed: Bed): SpringDressing {
  if (!holdsWanted) return spring;
  const { depth: _, ...rest } = spring;
  return { ...rest, holds: bed.soilDepth };
}

function yearsOf(beds: readonly BedSoilYears[]): readonly GardenSoilYear[] {
  const [first] = beds;
  if (first === undefined) return [];
  return first.soil.years.map(({ year, added }, at) => ({
    year,
    added: added.map(({ material, depth }, which) => {
      const sum = (key: "low" | "likely" | "high"): Volume =>
        quantity(
          beds.reduce((m3, bed) => {
            const each = bed.soil.years[at]?.added[which]?.depth[key].si ?? 0;
            return m3 + each * bed.area.si;
          }, 0),
          volumeDimension,
        );
      const basis = depth.basis;
      return {
        material,
        volume: { low: sum("low"), likely: sum("likely"), high: sum("high"), basis },
      };
    }),
  }));
}
