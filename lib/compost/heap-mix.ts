import { Given } from "../measure/given.ts";
import {
  type Density,
  isQuantity,
  type Mass,
  massDimension,
  quantity,
  type Range,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import { carbonNitrogen } from "./carbon-nitrogen.ts";
import { heapYield } from "./heap-yield.ts";
import { densityLimits, massLimits, shareLimits, volumeLimits } from "./limits.ts";

/** A material for the heap: a row of the table of heap materials. */
export interface HeapMaterial {
  readonly material: string;
  /** Carbon and nitrogen, shares of the dry mass, 0 to 1. */
  readonly carbonLow: number;
  readonly carbonHigh: number;
  readonly nitrogenLow: number;
  readonly nitrogenHigh: number;
  /** Water, a share of the moist mass; null where the shares are of the mass as it comes. */
  readonly moisture: number | null;
  /** Loose, as it comes; null where not known. */
  readonly density: Density | null;
  readonly source: string;
}

/** How much of a material goes onto the heap, and when. */
export interface HeapPart {
  readonly material: HeapMaterial;
  /** Loose volume, or mass as it comes. */
  readonly amount: Volume | Mass;
  /** Any word: "spring". Default: none. */
  readonly season?: string;
}

/** What a heap comes to. */
export interface HeapMix {
  readonly mass: Mass;
  /** As piled up, of the parts whose volume is known. */
  readonly raw: Volume;
  readonly finished: Range<Volume>;
  /** Carbon over nitrogen; null where there is no nitrogen. */
  readonly ratio: number | null;
  /** Water, a share of the moist mass; null where it is not known of a part. */
  readonly moisture: number | null;
  /** Parts, by name, that come by mass and whose density is not known: neither in `raw` nor `finished`. */
  readonly unmeasured: readonly string[];
  /** Against 25 to 30 to 1, which suits a heap best. */
  readonly fit: "too little carbon" | "fits" | "too much carbon";
  /** Null where the moisture is not known. */
  readonly damp: "too dry" | "fits" | "too wet" | null;
  readonly seasons: readonly HeapSeason[];
  readonly basis: readonly string[];
}

/** The same of one season. */
export interface HeapSeason {
  readonly season: string;
  readonly mass: Mass;
  readonly raw: Volume;
  readonly ratio: number | null;
}

/** A part in plain numbers. */
export interface PlainPart {
  readonly kg: number;
  readonly m3: number;
  readonly carbon: number;
  readonly nitrogen: number;
  /** Null where the shares are of the mass as it comes. */
  readonly moisture: number | null;
  readonly density: number | null;
  readonly season: string;
}

/**
 * What goes onto the heap through the year: its carbon to nitrogen, its moisture, and the finished
 * compost it makes. Materials are weighed in by their dry mass; by volume a bag of leaves would count
 * as much as a bag of grass that holds ten times its nitrogen.
 *
 * @param parts one or more: `material`, a row of the table of heap materials, taken at the middle of
 * its range; `amount`, a loose volume or a mass as it comes; `season`, any word.
 * @throws ProblemError where there is no part, a field is missing, of another kind or out of range; a
 * volume is given of a material whose density is not known, or all amounts are none.
 * @rule C:N = sum of dry mass x C / sum of dry mass x N; 25 to 30 preferred, moisture 0.5 to 0.6
 * @source nrcs-neh-637, cornell-compost-calc
 * @example
 * const row = (name) => published.heapMaterials.find((each) => each.material === name);
 * const heap = heapMix([
 *   { material: row("grass clippings"), amount: times(10, kilogram) },
 *   { material: row("leaves"), amount: times(6, kilogram) },
 * ]);
 * Math.round(heap.ratio) // => 31
 * heap.fit // => "too much carbon"
 */
export function heapMix(parts: readonly HeapPart[]): HeapMix {
  const given = new Given();
  const plain = given
    .list(parts, ["parts"], 1)
    .map((part, at) => heapPartOf(given, part, ["parts", at + 1]));
  const kg = plain.reduce((sum, part) => sum + part.kg, 0);
  if (given.clean && kg === 0) {
    given.add({
      code: "too-small",
      path: ["parts"],
      allowed: "parts of which at least one is more than nothing",
      received: "nothing in all",
      remedy: "Say how much of each goes onto the heap.",
    });
  }
  given.done();
  const whole = sumOf(plain);
  const seasons = [...new Set(plain.map(({ season }) => season))].map((season): HeapSeason => {
    const { mass, raw, ratio } = sumOf(plain.filter((part) => part.season === season));
    return { season, mass, raw, ratio };
  });
  const { ratio, moisture, raw } = whole;
  const unmeasured = parts.filter((_, at) => plain[at]?.density === null && plain[at]?.kg);
  return {
    ...whole,
    finished: heapYield(raw),
    fit:
      ratio === null || ratio > 30 + 1e-9
        ? "too much carbon"
        : ratio < 25 - 1e-9
          ? "too little carbon"
          : "fits",
    unmeasured: [...new Set(unmeasured.map(({ material }) => material.material))],
    damp:
      moisture === null ? null : moisture < 0.5 ? "too dry" : moisture > 0.6 ? "too wet" : "fits",
    seasons,
    basis: [...new Set(["nrcs-neh-637", ...parts.map(({ material }) => material.source)])],
  };
}

/** A part, checked; of its row's ranges the middle. */
export function heapPartOf(
  given: Given,
  part: unknown,
  path: readonly (string | number)[],
): PlainPart {
  const row = given.fields(part, path);
  const material = heapMaterialOf(given, row.material, [...path, "material"]);
  const { amount, season = "" } = row;
  const isMass = isQuantity(amount) && amount.dim.join() === massDimension.join();
  const size = isMass
    ? given.si(amount, "mass", [...path, "amount"], massLimits)
    : given.si(amount, "volume", [...path, "amount"], volumeLimits);
  const { density } = material;
  if (given.clean && !isMass && density === null) {
    given.add({
      code: "missing",
      path: [...path, "material", "density"],
      allowed: "a density, where the amount is a volume",
      received: "nothing",
      remedy: "Give the amount as a mass.",
    });
  }
  if (season !== "") given.text(season, [...path, "season"]);
  const kg = isMass ? size : size * (density ?? 0);
  const m3 = isMass ? (density === null ? 0 : size / density) : size;
  return { kg, m3, ...material, season: typeof season === "string" ? season : "" };
}

/** A row in plain numbers: the middle of its ranges. */
export function heapMaterialOf(
  given: Given,
  material: unknown,
  path: readonly (string | number)[],
) {
  const row = given.fields(material, path);
  const part = (key: string): number => given.plain(row[key], [...path, key], shareLimits);
  const carbon = (part("carbonLow") + part("carbonHigh")) / 2;
  const nitrogen = (part("nitrogenLow") + part("nitrogenHigh")) / 2;
  const moisture = row.moisture === null ? null : part("moisture");
  const density =
    row.density === null
      ? null
      : given.si(row.density, "density", [...path, "density"], densityLimits);
  return { carbon, nitrogen, moisture, density };
}

function sumOf(parts: readonly PlainPart[]) {
  const kg = parts.reduce((sum, part) => sum + part.kg, 0);
  const m3 = parts.reduce((sum, part) => sum + part.m3, 0);
  if (kg === 0) {
    return {
      mass: quantity(0, massDimension),
      raw: quantity(m3, volumeDimension),
      ratio: null,
      moisture: 0,
    };
  }
  const { ratio, moisture: known } = carbonNitrogen(
    parts.map(({ kg: each, moisture, ...shares }) => ({
      mass: quantity(each, massDimension),
      ...shares,
      moisture: moisture ?? 0,
    })),
  );
  const moisture = parts.some((part) => part.kg > 0 && part.moisture === null) ? null : known;
  return { mass: quantity(kg, massDimension), raw: quantity(m3, volumeDimension), ratio, moisture };
}
