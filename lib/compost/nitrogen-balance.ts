import { Given } from "../measure/given.ts";
import {
  type Area,
  type Mass,
  massDimension,
  pound,
  quantity,
  squareFoot,
} from "../measure/index.ts";
import { areaLimits, massLimits } from "./limits.ts";

/** What vegetables need: a row of the table of nutrient needs. */
export interface NutrientNeed {
  readonly crops: string;
  /** Nitrogen in lb for 1,000 sq ft and year, 0 to 20. */
  readonly nitrogen: number;
  readonly source: string;
}

/** How what comes free stands to what the crops need. */
export interface NitrogenBalance {
  readonly need: Mass;
  readonly supply: Mass;
  /** What is missing; none where there is enough. */
  readonly short: Mass;
  /** What is too much; none where it is not. */
  readonly over: Mass;
  readonly fit: "short" | "enough" | "over";
  readonly basis: readonly string[];
}

/**
 * The nitrogen that crops need on an area, and what is missing of it or too much. Up to a quarter over
 * the need is called enough: nobody weighs compost closer.
 *
 * @param area of the beds inside the boards, 0 to 10,000,000 m2.
 * @param need a row: `nitrogen` in lb for 1,000 sq ft and year, 0 to 20.
 * @param supply nitrogen that comes free in the year, 0 to 1,000,000 kg.
 * @throws ProblemError where a field is missing, of another kind or out of range.
 * @rule need = area x rate; short = need - supply, over = supply - need, neither below none
 * @source umd-fertilizer, common practice
 * @example
 * const need = { crops: "vegetables in general", nitrogen: 2, source: "umd-fertilizer" };
 * nitrogenBalance(times(500, squareFoot), need, times(0.4, pound)).short // => 9.6 oz
 */
export function nitrogenBalance(area: Area, need: NutrientNeed, supply: Mass): NitrogenBalance {
  const given = new Given();
  const m2 = given.si(area, "area", ["area"], areaLimits);
  const row = given.fields(need, ["need"]);
  const rate = given.plain(row.nitrogen, ["need", "nitrogen"], { min: 0, max: 20 });
  const supplyKg = given.si(supply, "mass", ["supply"], massLimits);
  given.done();
  const needKg = (rate * pound.si * m2) / (1000 * squareFoot.si);
  const mass = (kg: number): Mass => quantity(Math.max(0, kg), massDimension);
  return {
    need: mass(needKg),
    supply,
    short: mass(needKg - supplyKg),
    over: mass(supplyKg - needKg),
    fit: supplyKg < needKg * (1 - 1e-9) ? "short" : supplyKg > needKg * 1.25 ? "over" : "enough",
    basis: [need.source],
  };
}
