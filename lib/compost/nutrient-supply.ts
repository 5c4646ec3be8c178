import type { Caution } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import {
  type Area,
  type Density,
  type Length,
  type Mass,
  massDimension,
  quantity,
  type Range,
} from "../measure/index.ts";
import { compostOveruse } from "./compost-overuse.ts";
import { areaLimits, densityLimits, depthLimits } from "./limits.ts";

/** What a compost holds: a row of the table of compost nutrients, shares of the dry mass. */
export interface CompostNutrients {
  readonly material: string;
  /** Total nitrogen, 0 to 0.1. */
  readonly nitrogenLow: number;
  readonly nitrogen: number;
  readonly nitrogenHigh: number;
  /** P2O5 and K2O, 0 to 0.1; null where not known. */
  readonly phosphate: number | null;
  readonly potash: number | null;
  readonly source: string;
}

/** How deep, and how heavy the compost is. */
export interface NutrientSupplyOptions {
  /** Spread loose each year, 0 to 20 ft. */
  readonly depth: Length;
  /** Dry mass of a loose volume, 1 to 5,000 kg/m3: `densityDry` of the material's row. */
  readonly densityDry: Density;
  /** Years looked at, 1 to 30; default 5. */
  readonly years?: number;
}

/** What a dressing brings. */
export interface NutrientSupply {
  readonly dryMass: Mass;
  /** All of it; most comes free only over many years. */
  readonly nitrogen: Range<Mass>;
  readonly phosphate: Mass | null;
  readonly potash: Mass | null;
  /**
   * Nitrogen that comes free in each year, from the first, where the same is spread every year: that
   * of this year's compost and of all before it.
   */
  readonly freed: readonly Range<Mass>[];
  readonly cautions: readonly Caution[];
}

/** Share of the nitrogen of one dressing that comes free, in the first year and the years after. */
type Release = (year: number) => number;
/** A tenth to a sixth in the first year, half of that in the next, and so on. */
const halving =
  (first: number): Release =>
  (year) =>
    first / 2 ** year;
/** Shares of what remains, year by year, and little enough afterwards to be left out. */
const ofTheRest =
  (shares: readonly number[]): Release =>
  (year) =>
    (shares[year] ?? 0) * shares.slice(0, year).reduce((left, share) => left * (1 - share), 1);
const release = {
  low: ofTheRest([0.05, 0.07, 0.03]),
  likely: halving(0.1),
  high: halving(0.15),
} as const;

const share = { min: 0, max: 0.1 };

/**
 * The nitrogen, phosphate and potash in a yearly dressing of compost, and the nitrogen that comes free
 * of it year by year. Of a compost's nitrogen only a tenth or so feeds the first crop.
 *
 * @param area dressed, 0 to 10,000,000 m2.
 * @param nutrients a row with `nitrogenLow`, `nitrogen`, `nitrogenHigh`, `phosphate`, `potash`, shares
 * of the dry mass, 0 to 0.1, the last two null where not known.
 * @param options `depth`, loose, 0 to 20 ft; `densityDry`, 1 to 5,000 kg/m3; `years`, 1 to 30, default 5.
 * @throws ProblemError naming every field that is missing, of another kind or out of range; where the
 * shares of nitrogen do not rise (`contradiction`).
 * @rule dry mass = area x depth x dry density; free in a year = sum over all dressings of nitrogen x share by age: 10 to 15 % in the first year and half as much each year after, or as little as 5 %, then 7 % and 3 % of the rest and no more
 * @source compost-calculations-sheet, hartz-compost-nitrogen
 * @example
 * const compost = published.materials.find((row) => row.material === "compost");
 * const nutrients = published.compostNutrients.find((row) => row.material === "compost");
 * const supply = nutrientSupply(times(1000, squareFoot), nutrients, { depth: inch, densityDry: compost.densityDry });
 * supply.nitrogen.likely // => 31.2 lb
 * supply.freed[0].likely // => 3.12 lb
 */
export function nutrientSupply(
  area: Area,
  nutrients: CompostNutrients,
  options: NutrientSupplyOptions,
): NutrientSupply {
  const given = new Given();
  const m2 = given.si(area, "area", ["area"], areaLimits);
  const row = given.fields(nutrients, ["nutrients"]);
  const part = (key: string): number => given.plain(row[key], ["nutrients", key], share);
  const known = (key: string): number | null => (row[key] === null ? null : part(key));
  const nitrogen = {
    low: part("nitrogenLow"),
    likely: part("nitrogen"),
    high: part("nitrogenHigh"),
  };
  const [phosphate, potash] = [known("phosphate"), known("potash")];
  const chosen = given.fields(options, ["options"]);
  const depthM = given.si(chosen.depth, "length", ["depth"], depthLimits);
  const density = given.si(chosen.densityDry, "density", ["densityDry"], densityLimits);
  const years = given.whole(chosen.years ?? 5, ["years"], { min: 1, max: 30 });
  if (given.clean && !(nitrogen.low <= nitrogen.likely && nitrogen.likely <= nitrogen.high)) {
    given.add({
      code: "contradiction",
      path: ["nutrients", "nitrogen"],
      allowed: "shares that rise from nitrogenLow over nitrogen to nitrogenHigh",
      received: `${nitrogen.low}, ${nitrogen.likely}, ${nitrogen.high}`,
      remedy: "Put the three shares in order.",
    });
  }
  given.done();
  const dryKg = m2 * depthM * density;
  const mass = (kg: number): Mass => quantity(kg, massDimension);
  const range = (of: (key: "low" | "likely" | "high") => number): Range<Mass> => ({
    low: mass(of("low")),
    likely: mass(of("likely")),
    high: mass(of("high")),
    basis: [nutrients.source, "compost-calculations-sheet", "hartz-compost-nitrogen"],
  });
  const freedBy = (year: number, key: "low" | "likely" | "high"): number => {
    let sum = 0;
    for (let age = 0; age <= year; age += 1) sum += release[key](age);
    return dryKg * nitrogen[key] * sum;
  };
  return {
    dryMass: mass(dryKg),
    nitrogen: range((key) => dryKg * nitrogen[key]),
    phosphate: phosphate === null ? null : mass(dryKg * phosphate),
    potash: potash === null ? null : mass(dryKg * potash),
    freed: Array.from({ length: years }, (_, year) => range((key) => freedBy(year, key))),
    // A hair more than an inch: 25.4 mm reached by adding up is not more.
    cautions: depthM > 0.0254 + 1e-9 ? [compostOveruse()] : [],
  };
}
