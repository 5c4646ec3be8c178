import { triangular } from "../chance/distributions.ts";
import { quasiRandom } from "../chance/index.ts";
import { bandOf } from "../chance/quantiles.ts";
import { type DrawnMaterial, type RunTrace, runSoil } from "./soil-run.ts";
import type { SoilYearsPlan } from "./soil-years-plan.ts";

type Three = readonly [low: number, likely: number, high: number];

/** A figure's range at a place of a trace. */
export interface Bands {
  depthM(month: number): Three;
  organic(month: number): Three;
  addedM(place: number): Three;
}

/** Three figures of each material are drawn: how far it settles, how rich it is, how fast it rots. */
const drawnEach = 3;
/** Materials beyond these share the draws of those before. */
const mostDimensions = 24;

/** Runs all draws, and finds at each place the bounds that hold four of five of them. */
export function bandsOf(plan: SoilYearsPlan, likely: RunTrace): Bands {
  if (plan.draws === 0) {
    const same = (values: Float64Array) => (at: number) => {
      const value = values[at] ?? 0;
      return [value, value, value] as const;
    };
    return {
      depthM: same(likely.depthM),
      organic: same(likely.organic),
      addedM: same(likely.addedM),
    };
  }
  const { draws, months, years, springs } = plan;
  const columns = (count: number) => Array.from({ length: count }, () => new Float64Array(draws));
  const depths = columns(months + 1);
  const organics = columns(months + 1);
  const addeds = columns(springs.length * years);
  const trace: RunTrace = {
    depthM: new Float64Array(months + 1),
    organic: new Float64Array(months + 1),
    addedM: new Float64Array(springs.length * years),
  };
  const draw = drawer(plan);
  for (let at = 0; at < draws; at += 1) {
    trace.addedM.fill(0);
    runSoil(plan, draw(at), trace);
    put(trace.depthM, depths, at);
    put(trace.organic, organics, at);
    put(trace.addedM, addeds, at);
  }
  const banded = (all: readonly Float64Array[], middle: Float64Array) => {
    const found = all.map((values) => bandOf(values));
    return (place: number): Three => {
      const { low, high } = found[place] ?? { low: 0, high: 0 };
      return [low, middle[place] ?? 0, high];
    };
  };
  return {
    depthM: banded(depths, likely.depthM),
    organic: banded(organics, likely.organic),
    addedM: banded(addeds, likely.addedM),
  };
}

function put(values: Float64Array, columns: readonly Float64Array[], at: number): void {
  for (let place = 0; place < values.length; place += 1) {
    const column = columns[place];
    if (column) column[at] = values[place] ?? 0;
  }
}

/** What is drawn of each material in each draw: the same for every bed with the same seed. */
function drawer({ materials, draws, seed }: SoilYearsPlan): (at: number) => DrawnMaterial[] {
  const dimensions = Math.max(1, Math.min(mostDimensions, drawnEach * materials.length));
  const points = quasiRandom(draws, dimensions, { seed });
  return (at) =>
    materials.map(({ settle, organic, decay }, of) => {
      const u = (which: number): number =>
        points[(of * drawnEach + which) % dimensions]?.[at] ?? 0.5;
      return {
        settle: triangular(u(0), settle),
        organic: triangular(u(1), organic),
        rate: triangular(u(2), decay),
      };
    });
}
