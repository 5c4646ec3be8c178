import { icbmAfter } from "../decay/icbm.ts";
import {
  nextDeficit,
  rothcCover,
  rothcDecay,
  rothcDeficit,
  rothcMoisture,
  rothcRespired,
  rothcSplits,
  rothcTemperature,
} from "../decay/rothc.ts";
import type { Rotting } from "./rotting-material.ts";

/** How organic matter rots, in plain numbers: pools whose sum is what is left. */
export interface RotModel {
  /** How many pools. */
  readonly pools: number;
  /** Shares of the pools that a fresh material begins with, together 1. */
  start(material: Rotting): readonly number[];
  /** One month's rot, from 0 for January, of a material that rots at this yearly rate. */
  stepper(material: Rotting, rate: number): (pools: Float64Array, month: number) => void;
}

/** A month's weather, as the models take it. */
export interface RotMonth {
  readonly temperatureC: number;
  readonly rainMm: number;
  readonly panMm: number;
}

/** First order: each material at its own rate, faster or slower by one factor for the place. */
export function simpleRot(pace: number): RotModel {
  return {
    pools: 1,
    start: () => [1],
    stepper: (_, rate) => {
      const left = Math.exp((-rate * pace) / 12);
      return (pools) => {
        pools[0] = (pools[0] ?? 0) * left;
      };
    },
  };
}

/** What a material is to the published models, which know only a few kinds of it. */
function kindOf({ organicVolume, organic }: Rotting): "soil" | "compost" | "wood" {
  if (organicVolume < 0.5) return "soil";
  return organic.likely > 0.8 ? "wood" : "compost";
}

/** How much faster than likely a material rots. */
const faster = (material: Rotting, rate: number): number =>
  material.decay.likely === 0 ? 1 : rate / material.decay.likely;

/** Of what rots in the young pool so much becomes old: crops and wood, manure and compost. */
const humified = { soil: 0.125, compost: 0.25, wood: 0.125 };

/** Two pools: composts and wood begin young, the humus of soil is old. */
export function icbmRot(year: readonly RotMonth[], clayPercent: number): RotModel {
  const climate = weatherFactors(year, clayPercent).reduce((sum, factor) => sum + factor / 12, 0);
  return {
    pools: 2,
    start: (material) => (kindOf(material) === "soil" ? [0, 1] : [1, 0]),
    stepper: (material, rate) => {
      const r = climate * faster(material, rate);
      const kept = humified[kindOf(material)];
      const rates = { young: 0.8 * r, old: 0.00605 * r, humified: kept, input: 0 };
      return (pools) => {
        const after = icbmAfter({ young: pools[0] ?? 0, old: pools[1] ?? 0 }, 1 / 12, rates);
        pools[0] = after.young;
        pools[1] = after.old;
      };
    },
  };
}

// Shares of the pools at rest in the Rothamsted model's own example, without its inert carbon.
const atRest = [0.1606, 5.8213, 0.8717, 32.6202] as const;
const restSum = atRest.reduce((sum, pool) => sum + pool, 0);

/** Four pools that rot. Composts come in as farmyard manure does, wood as from trees; soil has long been at rest. */
export function rothcRot(
  year: readonly RotMonth[],
  clayPercent: number,
  covered: readonly boolean[],
): RotModel {
  const factors = weatherFactors(year, clayPercent).map(
    (factor, month) => factor * rothcCover(covered[month] ?? true),
  );
  const respiredRatio = rothcRespired(clayPercent);
  return {
    pools: 4,
    start: (material) => {
      const kind = kindOf(material);
      if (kind === "soil") return atRest.map((pool) => pool / restSum);
      const split = kind === "wood" ? rothcSplits.wood : rothcSplits.manure;
      return [split.dpm, split.rpm, 0, split.hum];
    },
    stepper: (material, rate) => {
      const pace = faster(material, rate);
      return (pools, month) => {
        const [dpm = 0, rpm = 0, bio = 0, hum = 0] = pools;
        const factor = (factors[month] ?? 0) * pace;
        const after = rothcDecay({ dpm, rpm, bio, hum, iom: 0 }, { factor, respiredRatio });
        pools[0] = after.dpm;
        pools[1] = after.rpm;
        pools[2] = after.bio;
        pools[3] = after.hum;
      };
    },
  };
}

/** Temperature's and moisture's factor of each month, once the year's dryness repeats itself. */
function weatherFactors(year: readonly RotMonth[], clayPercent: number): readonly number[] {
  const mostMm = rothcDeficit(clayPercent, 23);
  let deficitMm = 0;
  let factors: readonly number[] = [];
  // The second time round the year begins as dry as it ended.
  for (let round = 0; round < 2; round += 1) {
    factors = year.map(({ temperatureC, rainMm, panMm }) => {
      deficitMm = nextDeficit(deficitMm, { rainMm, panMm, covered: true }, mostMm);
      return rothcTemperature(temperatureC) * rothcMoisture(deficitMm, mostMm);
    });
  }
  return factors;
}
