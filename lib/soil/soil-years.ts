import type { Caution } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import type { Length, Range } from "../measure/index.ts";
import { outsideFittedSoil } from "./outside-fitted-soil.ts";
import type { RottingMaterial } from "./rotting-material.ts";
import { bandsOf } from "./soil-bands.ts";
import { metres, type SoilLayer } from "./soil-layer.ts";
import { type Lot, runSoil, type Shares } from "./soil-run.ts";
import { emptyTrace, likelyOf, planOf, type SoilYearsPlan } from "./soil-years-plan.ts";
import { sourcesOf } from "./sources.ts";

/** What is put in each spring: a depth, or as much as holds a depth. */
export interface SpringDressing {
  readonly material: RottingMaterial;
  /** Loose depth each spring, 0 to 20 ft; or `holds`. */
  readonly depth?: Length;
  /** Settled depth of the whole that it fills up to, 0 to 20 ft. */
  readonly holds?: Length;
  /** 1 to 12; default 4, April. */
  readonly month?: number;
  /** From which year, 0 for the year of the filling, or of going on; default 1, the next spring. */
  readonly from?: number;
  /** To which year; default the last. */
  readonly until?: number;
}

/** A month's weather. */
export interface SoilMonthWeather {
  /** Mean of the air, -60 to 60 °C. */
  readonly temperatureC: number;
  /** 0 to 5,000 mm. */
  readonly rainMm: number;
  /** From an open pan, 0 to 2,000 mm. */
  readonly panMm: number;
}

/** How far to look, what is put in, how it rots and how sure the rates are. */
export interface SoilYearsOptions {
  /** 1 to 50; default 15. */
  readonly years?: number;
  /** Month of the filling, 1 to 12; default 4, April. */
  readonly startMonth?: number;
  /** Months in which what is laid loose settles, 1 to 24; default 6. */
  readonly seasonMonths?: number;
  readonly springs?: readonly SpringDressing[];
  /** `simple` (default), or one of the published models `icbm` and `rothc`, which take `weather`. */
  readonly model?: "simple" | "icbm" | "rothc";
  /** With `simple`: how much faster all rots here than at 10 °C, 0 to 10; default 1. */
  readonly pace?: number;
  /** The twelve months of a usual year, from January. */
  readonly weather?: readonly SoilMonthWeather[];
  /** Clay in per cent of the dry mass, 0 to 100; default 20. */
  readonly clayPercent?: number;
  /** Draws of the uncertain figures, 0 to 10,000; default 0: no range. */
  readonly draws?: number;
  /** A whole number from 0; default 1. */
  readonly seed?: number;
}

/** A bed's soil at a month's beginning. */
export interface SoilMonth {
  /** Whole months from the filling. */
  readonly month: number;
  readonly depth: Range<Length>;
  /** Share of the dry mass that is organic. */
  readonly organic: Range<number>;
}

/** What one year's springs took. */
export interface SoilYear {
  /** 0 for the year of the filling. */
  readonly year: number;
  /** Loose depth of each dressing, in the order given. */
  readonly added: readonly { readonly material: string; readonly depth: Range<Length> }[];
}

/** A bed's soil through the years, for its area. */
export interface SoilYears {
  readonly months: readonly SoilMonth[];
  readonly years: readonly SoilYear[];
  /** Depth of each material by month, likely. */
  readonly materials: readonly { readonly material: string; readonly depths: readonly Length[] }[];
  /** Carbon, likely, kg for each square metre: put in, still there, breathed out. */
  readonly carbon: {
    readonly put: number;
    readonly left: number;
    readonly respired: number;
  };
  /** What stands at the end, likely, to go on from. */
  readonly standing: readonly SoilLayer[];
  readonly cautions: readonly Caution[];
  readonly basis: readonly string[];
}

/**
 * The depth and organic matter of a bed's soil month by month. What is laid loose settles in its
 * first season; then its organic matter rots and its depth goes with it. That depth is the minerals'
 * depth, which stays, and what is left of the organic matter at its own settled density, is our
 * assumption: no published model of the depth of a filled bed was found.
 *
 * @param layers from below: `material`, a row of the table of materials; `depth` as laid loose, 0 to
 * 20 ft, or of a `settled` layer as it lies.
 * @param options `years`, 1 to 50, default 15; `startMonth`, 1 to 12, default 4; `seasonMonths`, 1 to
 * 24, default 6; `springs`, what is put in each spring; `model`, default `simple`, and for the others
 * `weather` of twelve months and `clayPercent`, default 20; `pace`, default 1; `draws` of the
 * uncertain figures, 0 to 10,000, default 0; `seed`, default 1.
 * @returns months from 0, the filling, ranges holding four of five draws about what is likely.
 * @throws ProblemError naming every field that is missing, of another kind or out of range; where a
 * model is asked for without its weather (`missing`), or a spring has both or neither of `depth` and
 * `holds` (`contradiction`).
 * @rule depth = sum over the layers of mineral depth + organic mass left / its settled density, each with what settling has not yet taken: our assumption
 * @source common practice
 * @example
 * const compost = published.materials.find((row) => row.material === "compost");
 * const { months } = soilYears([{ material: compost, depth: times(10, inch) }]);
 * months[0].depth.likely // => 10 in
 * months[6].depth.likely // => 8 in
 */
export function soilYears(layers: readonly SoilLayer[], options: SoilYearsOptions = {}): SoilYears {
  const given = new Given();
  const plan = planOf(given, layers, options);
  given.done();
  const likely = emptyTrace(plan);
  const run = runSoil(plan, plan.materials.map(likelyOf), likely);
  const basis = basisOf(plan);
  const bands = bandsOf(plan, likely);
  const range = (low: number, middle: number, high: number): Range<Length> => ({
    low: metres(Math.min(low, middle)),
    likely: metres(middle),
    high: metres(Math.max(high, middle)),
    basis,
  });
  const share = (low: number, middle: number, high: number): Range<number> => ({
    low: Math.min(low, middle),
    likely: middle,
    high: Math.max(high, middle),
    basis,
  });
  return {
    months: Array.from({ length: plan.months + 1 }, (_, month) => ({
      month,
      depth: range(...bands.depthM(month)),
      organic: share(...bands.organic(month)),
    })),
    years: Array.from({ length: plan.years }, (_, year) => ({
      year,
      added: plan.springs.map((spring, at) => ({
        material: plan.rows[spring.of]?.material ?? "",
        depth: range(...bands.addedM(at * plan.years + year)),
      })),
    })),
    materials: plan.rows.map((row, of) => ({
      material: row.material,
      depths: Array.from({ length: plan.months + 1 }, (_, month) =>
        metres(likely.byMaterialM?.[month * plan.rows.length + of] ?? 0),
      ),
    })),
    carbon: {
      put: carbonShare * run.end.addedKg,
      left: carbonShare * run.end.leftKg,
      respired: carbonShare * run.end.respiredKg,
    },
    standing: standingOf(plan, run.lots, run.shares),
    cautions: outside(plan, likely.organic),
    basis,
  };
}

/** Of organic matter so much is carbon, after the course on humus balances. */
const carbonShare = 0.58;

function basisOf({ rows }: SoilYearsPlan): readonly string[] {
  const ids = rows.flatMap(({ settleSource, organicSource, decaySource }) =>
    [settleSource, organicSource, decaySource].flatMap(sourcesOf),
  );
  return [...new Set(ids)];
}

/** Above a tenth organic the published models go beyond what they were fitted to. */
function outside({ isPublished, rows }: SoilYearsPlan, organic: Float64Array): readonly Caution[] {
  const most = organic.reduce((a, b) => Math.max(a, b), 0);
  if (!isPublished || most <= 0.1) return [];
  const names = rows.map((row) => row.material).join(", ");
  return [outsideFittedSoil({ because: `${names}: ${Math.round(100 * most)} % organic` })];
}

function standingOf(
  { rows, seasonMonths }: SoilYearsPlan,
  lots: readonly (readonly Lot[])[],
  shares: readonly Shares[],
): readonly SoilLayer[] {
  return lots.flatMap((all, of) => {
    const material = rows[of];
    const share = shares[of];
    if (material === undefined || share === undefined) return [];
    return all.map(({ looseM, pools, age }): SoilLayer => {
      const begunKg = share.organicKg * looseM;
      const left = [...pools].map((kg) => (begunKg > 0 ? Math.min(1, kg / begunKg) : 0));
      return age >= seasonMonths
        ? { material, depth: metres(looseM * share.kept), settled: true, left }
        : { material, depth: metres(looseM), age, left };
    });
  });
}
