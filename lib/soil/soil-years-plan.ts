import type { Given } from "../measure/given.ts";
import { depthLimits } from "./limits.ts";
import { icbmRot, type RotModel, type RotMonth, rothcRot, simpleRot } from "./rot-model.ts";
import type { Rotting, RottingMaterial } from "./rotting-material.ts";
import { layersOf, Materials } from "./soil-layer.ts";
import type { DrawnMaterial, PlainSpring, RunPlan, RunTrace } from "./soil-run.ts";

/** A run's plan with what belongs to it outside. */
export interface SoilYearsPlan extends RunPlan {
  readonly rows: readonly RottingMaterial[];
  readonly years: number;
  readonly draws: number;
  readonly seed: number;
  readonly isPublished: boolean;
}

const models = ["simple", "icbm", "rothc"] as const;
const ofYear = { min: 1, max: 12 };

/** Reads layers and options; problems go to `given`. */
export function planOf(given: Given, layers: unknown, options: unknown): SoilYearsPlan {
  const chosen = given.fields(options, ["options"]);
  const whole = (key: string, normal: number, bounds: { min: number; max: number }): number =>
    given.whole(chosen[key] ?? normal, [key], bounds);
  const years = whole("years", 15, { min: 1, max: 50 });
  const kind = given.oneOf(chosen.model ?? "simple", models, ["model"]);
  const model = modelOf(given, kind, chosen);
  const materials = new Materials(given);
  const plainLayers = layersOf(given, layers, { materials, pools: model.pools });
  const springs = given
    .list(chosen.springs ?? [], ["springs"])
    .map((spring, at) => springOf(given, spring, { at, years, materials }));
  return {
    rows: materials.rows,
    materials: materials.figures,
    layers: plainLayers,
    springs,
    model,
    isPublished: kind !== "simple",
    years,
    months: years * 12,
    startMonth: whole("startMonth", 4, ofYear) - 1,
    seasonMonths: whole("seasonMonths", 6, { min: 1, max: 24 }),
    draws: whole("draws", 0, { min: 0, max: 10_000 }),
    seed: whole("seed", 1, { min: 0, max: 2 ** 32 - 1 }),
  };
}

type Chosen = Readonly<Record<string, unknown>>;

function modelOf(given: Given, kind: (typeof models)[number], chosen: Chosen): RotModel {
  const pace = given.plain(chosen.pace ?? 1, ["pace"], { min: 0, max: 10 });
  const clay = given.plain(chosen.clayPercent ?? 20, ["clayPercent"], { min: 0, max: 100 });
  const isNeeded = kind !== "simple";
  const year = chosen.weather === undefined && !isNeeded ? [] : weatherOf(given, chosen.weather);
  if (kind === "simple") return simpleRot(pace);
  return kind === "icbm" ? icbmRot(year, clay) : rothcRot(year, clay, []);
}

function weatherOf(given: Given, weather: unknown): readonly RotMonth[] {
  const list = given.list(weather, ["weather"], 12);
  if (list.length > 12) {
    given.add({
      code: "unreadable",
      path: ["weather"],
      allowed: "twelve months",
      received: `${list.length} months`,
      remedy: "Give the twelve months of a usual year, from January.",
    });
  }
  return list.map((month, at) => {
    const path = ["weather", at + 1];
    const row = given.fields(month, path);
    const plain = (key: string, bounds: { min: number; max: number }): number =>
      given.plain(row[key], [...path, key], bounds);
    return {
      temperatureC: plain("temperatureC", { min: -60, max: 60 }),
      rainMm: plain("rainMm", { min: 0, max: 5000 }),
      panMm: plain("panMm", { min: 0, max: 2000 }),
    };
  });
}

function springOf(
  given: Given,
  spring: unknown,
  {
    at,
    years,
    materials,
  }: { readonly at: number; readonly years: number; readonly materials: Materials },
): PlainSpring {
  const path = ["springs", at + 1];
  const row = given.fields(spring, path);
  const holds = row.holds !== undefined;
  if (given.clean && holds === (row.depth !== undefined)) {
    given.add({
      code: "contradiction",
      path,
      allowed: "either a depth put in each spring, or a depth that it holds",
      received: holds ? "both" : "neither",
      remedy: "Give one of `depth` and `holds`.",
    });
  }
  const depth = holds ? row.holds : (row.depth ?? depthLimits.min);
  const whole = (key: string, normal: number, bounds: { min: number; max: number }): number =>
    given.whole(row[key] ?? normal, [...path, key], bounds);
  return {
    of: materials.placeOf(row.material, [...path, "material"]),
    depthM: given.si(depth, "length", [...path, holds ? "holds" : "depth"], depthLimits),
    holds,
    month: whole("month", 4, ofYear) - 1,
    from: whole("from", 1, { min: 0, max: 50 }),
    until: whole("until", Math.max(0, years - 1), { min: 0, max: 50 }),
  };
}

/** A material's likely figures. */
export const likelyOf = ({ settle, organic, decay }: Rotting): DrawnMaterial => ({
  settle: settle.likely,
  organic: organic.likely,
  rate: decay.likely,
});

/** A trace for the likely run, with the depth of each material. */
export function emptyTrace({ months, years, springs, rows }: SoilYearsPlan): RunTrace {
  return {
    depthM: new Float64Array(months + 1),
    organic: new Float64Array(months + 1),
    addedM: new Float64Array(springs.length * years),
    byMaterialM: new Float64Array((months + 1) * rows.length),
  };
}
