import { Given } from "../measure/given.ts";
import { carbonLimits } from "./limits.ts";
import type { RothcPools } from "./rothc.ts";
import { monthOf, type RothcMonthSpec, type RothcSoil, runMonths, soilOf } from "./rothc-run.ts";

/** The soil, and its inert carbon. */
export interface RothcRestSoil extends RothcSoil {
  /** Inert carbon, 0 to 1,000,000,000; default none. */
  readonly iom?: number;
}

/** Pools that no longer change from year to year. */
export interface RothcAtRest extends RothcPools {
  readonly total: number;
  /** How many years of the same weather it took. */
  readonly years: number;
}

/** After so many years the slowest pool has rested for long. */
const mostYears = 20_000;

/**
 * The pools that a soil comes to where every year is the same, from empty ones: years are run until
 * the carbon, in t/ha, changes by less than 0.000001 in one.
 *
 * @param year its twelve months, as for `rothcRun`.
 * @param soil `clayPercent`; `depthCm`, default 23; `iom`, inert carbon, default none.
 * @returns the pools at the year's end.
 * @throws ProblemError where there are not twelve months, or a figure is missing, of another kind or
 * out of range; where the soil is too cold or dry to come to rest in 20,000 years (`contradiction`).
 * @rule one year after another until the total changes by less than 0.000001 t/ha
 * @source rothc-2025
 * @example
 * const year12 = Array.from({ length: 12 }, () => ({ temperatureC: 10, rainMm: 60, panMm: 40, carbon: 0.1 }));
 * Math.round(rothcAtRest(year12, { clayPercent: 20 }).total) // => 16
 */
export function rothcAtRest(year: readonly RothcMonthSpec[], soil: RothcRestSoil): RothcAtRest {
  const given = new Given();
  const list = given.list(year, ["year"], 12);
  if (given.clean && list.length !== 12) {
    given.add({
      code: "unreadable",
      path: ["year"],
      allowed: "twelve months",
      received: `${list.length} months`,
      remedy: "Give the twelve months of one year.",
    });
  }
  const months = list.map((month, at) => monthOf(given, month, ["year", at + 1]));
  const { clay, mostMm, deficitMm } = soilOf(given, soil);
  const chosen = given.fields(soil, ["soil"]);
  const iom = given.plain(chosen.iom ?? 0, ["soil", "iom"], carbonLimits);
  given.done();
  let state = { dpm: 0, rpm: 0, bio: 0, hum: 0, iom, deficitMm };
  let before = Number.NEGATIVE_INFINITY;
  let total = iom;
  let years = 0;
  while (Math.abs(total - before) >= 1e-6 && years < mostYears) {
    const end = runMonths(state, months, { clay, mostMm }).at(-1);
    if (end === undefined) break;
    const { dpm, rpm, bio, hum } = end;
    state = { dpm, rpm, bio, hum, iom, deficitMm: end.deficitMm };
    before = total;
    total = end.total;
    years += 1;
  }
  if (years === mostYears) {
    given.add({
      code: "contradiction",
      path: ["year"],
      allowed: `weather in which the soil comes to rest within ${mostYears} years`,
      received: "months too cold or too dry for it to rot",
      remedy: "Check the months' temperature, rain and evaporation.",
    });
    given.done();
  }
  const { dpm, rpm, bio, hum } = state;
  return { dpm, rpm, bio, hum, iom, total, years };
}
