import type { Caution } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import {
  type Length,
  lengthDimension,
  pound,
  quantity,
  type Range,
  squareFoot,
} from "../measure/index.ts";
import { compostOveruse } from "./compost-overuse.ts";
import type { NutrientNeed } from "./nitrogen-balance.ts";
import {
  type CompostNutrients,
  type NutrientSupplyOptions,
  nutrientSupply,
} from "./nutrient-supply.ts";

/** A dressing reckoned from what the crops need. */
export interface DressingForNitrogen {
  /** Loose, each year. */
  readonly depth: Range<Length>;
  readonly cautions: readonly Caution[];
}

/**
 * The yearly dressing whose nitrogen meets a need in a given year of dressing, by compost alone. It is
 * often deeper than is good for a bed: then its phosphorus and salts build up, and the caution says so;
 * less compost with a fertiliser that has nitrogen only does better.
 *
 * @param need a row: `nitrogen` in lb for 1,000 sq ft and year, 0 to 20.
 * @param nutrients a row, as for `nutrientSupply`.
 * @param options `densityDry`, 1 to 5,000 kg/m3; `years`: in which year of dressing it is met, 1 to 30,
 * default 5.
 * @throws ProblemError where a field is missing, of another kind or out of range, or the compost may
 * hold no nitrogen while some is needed.
 * @rule depth = need / nitrogen that comes free in that year of a dressing a unit deep
 * @source compost-calculations-sheet, hartz-compost-nitrogen, umd-fertilizer
 * @example
 * const compost = published.materials.find((row) => row.material === "compost");
 * const nutrients = published.compostNutrients.find((row) => row.material === "compost");
 * const found = dressingForNitrogen(published.nutrientNeeds[0], nutrients, { densityDry: compost.densityDry });
 * found.depth.likely.si < found.depth.high.si // => true
 */
export function dressingForNitrogen(
  need: NutrientNeed,
  nutrients: CompostNutrients,
  options: Omit<NutrientSupplyOptions, "depth">,
): DressingForNitrogen {
  const given = new Given();
  const row = given.fields(need, ["need"]);
  const rate = given.plain(row.nitrogen, ["need", "nitrogen"], { min: 0, max: 20 });
  given.fields(options, ["options"]);
  const compost = given.fields(nutrients, ["nutrients"]);
  if (rate > 0 && compost.nitrogenLow === 0) {
    given.add({
      code: "too-small",
      path: ["nutrients", "nitrogenLow"],
      allowed: "more than 0: without nitrogen no depth meets a need",
      received: "0",
      remedy: "Give the least nitrogen the compost may have, or use a fertiliser.",
    });
  }
  given.done();
  const metre = quantity(1, lengthDimension);
  const thousand = quantity(1000 * squareFoot.si, squareFoot.dim);
  const { freed } = nutrientSupply(thousand, nutrients, { ...options, depth: metre });
  const last = freed.at(-1);
  const depth = (freedKg: number): Length =>
    quantity(freedKg > 0 ? (rate * pound.si) / freedKg : 0, lengthDimension);
  const found = {
    low: depth(last?.high.si ?? 0),
    likely: depth(last?.likely.si ?? 0),
    high: depth(last?.low.si ?? 0),
    basis: [need.source, ...(last?.basis ?? [])],
  };
  return {
    depth: found,
    cautions: found.likely.si > 0.0254 + 1e-9 ? [compostOveruse({ because: need.crops })] : [],
  };
}
