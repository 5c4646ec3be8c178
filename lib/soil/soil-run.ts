import type { RotModel } from "./rot-model.ts";
import type { Rotting } from "./rotting-material.ts";
import type { PlainLayer } from "./soil-layer.ts";

/** What of a material is drawn. */
export interface DrawnMaterial {
  readonly settle: number;
  readonly organic: number;
  readonly rate: number;
}

/** What is put in each spring. */
export interface PlainSpring {
  readonly of: number;
  /** Loose depth; or, where a depth is to be held, that settled depth of the whole. */
  readonly depthM: number;
  readonly holds: boolean;
  /** From 0 for January. */
  readonly month: number;
  /** From which year, 0 for the first, and to which. */
  readonly from: number;
  readonly until: number;
}

/** All that a run needs besides what is drawn. */
export interface RunPlan {
  readonly materials: readonly Rotting[];
  readonly layers: readonly PlainLayer[];
  readonly springs: readonly PlainSpring[];
  readonly model: RotModel;
  readonly months: number;
  /** From 0 for January. */
  readonly startMonth: number;
  readonly seasonMonths: number;
}

/** Where a run's figures go: one place for each month from the start, and for each spring and year. */
export interface RunTrace {
  readonly depthM: Float64Array;
  readonly organic: Float64Array;
  /** Loose depth added, by spring and year: `spring * years + year`. */
  readonly addedM: Float64Array;
  /** Depth of each material, by month: `month * materials + material`; left out where nobody asks. */
  readonly byMaterialM?: Float64Array;
}

// Densities of solid matter in kg/m3: of organic matter and of minerals (quartz has 2,650).
const organicSolid = 1400;
const mineralSolid = 2650;

/** A material in one draw, for a metre of loose depth over a square metre. */
export interface Shares {
  readonly mineralM: number;
  readonly mineralKg: number;
  readonly organicKg: number;
  /** Settled density of its organic matter, kg/m3. */
  readonly organicDensity: number;
  readonly kept: number;
}

function sharesOf({ dry }: Rotting, { settle, organic }: DrawnMaterial): Shares {
  const kept = 1 - settle;
  const [light, heavy] = [organic / organicSolid, (1 - organic) / mineralSolid];
  const phi = light / (light + heavy);
  const organicKg = dry.likely * organic;
  return {
    mineralM: kept * (1 - phi),
    mineralKg: dry.likely - organicKg,
    organicKg,
    organicDensity: phi > 0 ? organicKg / (kept * phi) : 1,
    kept,
  };
}

/** Layers of one material laid together, or all of it that has settled. */
export interface Lot {
  /** As laid loose. */
  looseM: number;
  mineralM: number;
  mineralKg: number;
  /** kg of organic matter in each pool of the model. */
  readonly pools: Float64Array;
  age: number;
}

/** What a run came to besides its trace, in kg of organic matter for each square metre. */
export interface RunEnd {
  readonly addedKg: number;
  readonly leftKg: number;
  readonly respiredKg: number;
}

/** One run, month by month, for a square metre. */
export function runSoil(
  plan: RunPlan,
  drawn: readonly DrawnMaterial[],
  trace: RunTrace,
): {
  readonly end: RunEnd;
  readonly lots: readonly (readonly Lot[])[];
  readonly shares: readonly Shares[];
} {
  const { materials, layers, springs, model, months, startMonth, seasonMonths } = plan;
  const shares = materials.map((material, at) => sharesOf(material, drawn[at] ?? nothingDrawn));
  const steppers = materials.map((material, at) => model.stepper(material, drawn[at]?.rate ?? 0));
  const starts = materials.map((material) => model.start(material));
  const lots: Lot[][] = materials.map(() => []);
  const years = Math.ceil(months / 12);
  const balance = { addedKg: 0, respiredKg: 0 };

  const lay = (of: number, looseM: number, age: number, left?: readonly number[]): void => {
    const share = shares[of];
    const start = left ?? starts[of] ?? [];
    if (share === undefined) return;
    const organicKg = share.organicKg * looseM;
    const pools = Float64Array.from(start, (part) => part * organicKg);
    for (const kg of pools) balance.addedKg += kg;
    lots[of]?.push({
      looseM,
      mineralM: share.mineralM * looseM,
      mineralKg: share.mineralKg * looseM,
      pools,
      age,
    });
  };

  /** What consolidation has not yet taken, as a share of the settled depth. */
  const loose = (of: number, age: number): number => {
    const kept = shares[of]?.kept ?? 1;
    return age >= seasonMonths ? 0 : (1 / kept - 1) * (1 - age / seasonMonths);
  };

  const record = (month: number): number => {
    let [depthM, organicKg, allKg] = [0, 0, 0];
    for (let of = 0; of < lots.length; of += 1) {
      const all = lots[of] ?? [];
      const density = shares[of]?.organicDensity ?? 1;
      let ownM = 0;
      for (let at = 0; at < all.length; at += 1) {
        const lot = all[at];
        if (lot === undefined) continue;
        const kg = sumOf(lot.pools);
        ownM += (lot.mineralM + kg / density) * (1 + loose(of, lot.age));
        organicKg += kg;
        allKg += kg + lot.mineralKg;
      }
      depthM += ownM;
      if (trace.byMaterialM) trace.byMaterialM[month * materials.length + of] = ownM;
    }
    trace.depthM[month] = depthM;
    trace.organic[month] = allKg > 0 ? organicKg / allKg : 0;
    return depthM;
  };

  const dress = (month: number): void => {
    const year = Math.floor(month / 12);
    springs.forEach((spring, at) => {
      if ((startMonth + month) % 12 !== spring.month) return;
      if (year < spring.from || year > spring.until) return;
      const missingM = spring.holds ? spring.depthM - record(month) : spring.depthM;
      // What is laid loose settles to what is missing, as far as anybody can know beforehand.
      const likely = materials[spring.of]?.settle.likely ?? 0;
      const looseM = spring.holds ? Math.max(0, missingM) / (1 - likely) : missingM;
      if (looseM <= 0) return;
      lay(spring.of, looseM, 0);
      trace.addedM[at * years + year] = (trace.addedM[at * years + year] ?? 0) + looseM;
    });
  };

  for (const { of, depthM, settled, age, left } of layers) {
    const kept = shares[of]?.kept ?? 1;
    lay(of, settled ? depthM / kept : depthM, settled ? seasonMonths : age, left);
  }
  for (let month = 0; month < months; month += 1) {
    dress(month);
    record(month);
    for (let of = 0; of < lots.length; of += 1) {
      const all = lots[of] ?? [];
      const step = steppers[of];
      for (let at = 0; at < all.length; at += 1) {
        const lot = all[at];
        if (lot === undefined) continue;
        const before = sumOf(lot.pools);
        step?.(lot.pools, (startMonth + month) % 12);
        balance.respiredKg += before - sumOf(lot.pools);
        lot.age += 1;
      }
      if (all.length > 1) mergeSettled(all, seasonMonths);
    }
  }
  record(months);
  const leftKg = lots.flat().reduce((sum, lot) => sum + sumOf(lot.pools), 0);
  return { end: { ...balance, leftKg }, lots, shares };
}

/** By place and not by iterator: this is the innermost loop of all. */
function sumOf(pools: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < pools.length; at += 1) sum += pools[at] ?? 0;
  return sum;
}

const nothingDrawn: DrawnMaterial = { settle: 0, organic: 0, rate: 0 };

/** What has settled and is of one material goes on as one: its pools rot alike. */
function mergeSettled(lots: Lot[], seasonMonths: number): void {
  const [first] = lots;
  if (first === undefined || first.age < seasonMonths) return;
  for (let at = lots.length - 1; at > 0; at -= 1) {
    const lot = lots[at];
    if (lot === undefined || lot.age < seasonMonths) continue;
    first.looseM += lot.looseM;
    first.mineralM += lot.mineralM;
    first.mineralKg += lot.mineralKg;
    lot.pools.forEach((kg, pool) => {
      first.pools[pool] = (first.pools[pool] ?? 0) + kg;
    });
    lots.splice(at, 1);
  }
}
