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

/** What of a material's organic matter is humus of long ago, compost, and fresh wood: together 1. */
interface Origin {
  readonly soil: number;
  readonly compost: number;
  readonly wood: number;
}

// A loose cubic metre of the mean compost holds so much organic matter, in kg: dry density times organic
// share of its row in the table of materials.
const inCompost = 392 * 0.423;

/**
 * What a material is to the published models, which know only a few kinds of organic matter: our
 * assumption, like its limits. A mix is taken to hold as much compost as its volume says, the rest of
 * its organic matter as the soil's own.
 */
function originOf({ organicVolume, organic, dry, decay }: Rotting): Origin {
  const isRich = organicVolume > 0.999 && organic.likely > 0.8;
  // Peat is organic through and through, and yet has rotted for ages.
  if (isRich && decay.likely < 0.05) return { soil: 1, compost: 0, wood: 0 };
  if (isRich) return { soil: 0, compost: 0, wood: 1 };
  const held = dry.likely * organic.likely;
  const compost = held > 0 ? Math.min(1, (organicVolume * inCompost) / held) : 0;
  return { soil: 1 - compost, compost, wood: 0 };
}

/** How much faster than likely a material rots. */
const faster = (material: Rotting, rate: number): number =>
  material.decay.likely === 0 ? 1 : rate / material.decay.likely;

/**
 * Of what rots in the young pool so much becomes old: of manure and of crops as the model's treatments
 * have it (andren-katterer-1997); compost taken as manure, wood as crops.
 */
const humified = { compost: 0.25, wood: 0.125 };

// Monthly means of Uppsala, 1961 to 1990, in °C: from memory. There the model's climate factor is 1.
const uppsala = [-4.2, -4.3, -0.9, 3.9, 10.2, 15, 16.4, 15.2, 10.9, 6.4, 1.1, -2.7];
const atUppsala = uppsala.reduce((sum, t) => sum + rothcTemperature(t) / uppsala.length, 0);

/**
 * Two pools: composts and wood begin young, the humus of soil is old. The climate's factor is that of
 * the other model's temperature and moisture, against Uppsala's, where this one was fitted.
 */
export function icbmRot(year: readonly RotMonth[], clayPercent: number): RotModel {
  const mean = weatherFactors(year, clayPercent).reduce((sum, factor) => sum + factor / 12, 0);
  const climate = mean / atUppsala;
  return {
    pools: 2,
    start: (material) => {
      const { soil } = originOf(material);
      return [1 - soil, soil];
    },
    stepper: (material, rate) => {
      const r = climate * faster(material, rate);
      const { compost, wood } = originOf(material);
      const young = compost + wood;
      const kept =
        young > 0 ? (compost * humified.compost + wood * humified.wood) / young : humified.compost;
      const rates = { young: 0.8 * r, old: 0.00605 * r, humified: kept, input: 0 };
      return (pools) => {
        const after = icbmAfter({ young: pools[0] ?? 0, old: pools[1] ?? 0 }, 1 / 12, rates);
        pools[0] = after.young;
        pools[1] = after.old;
      };
    },
  };
}

// Carbon of the pools at rest in the Rothamsted model's own example (rothc-2025), without the inert one.
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
      const { soil, compost, wood } = originOf(material);
      const pools = atRest.map((pool) => (soil * pool) / restSum);
      for (const [share, split] of [
        [compost, rothcSplits.manure],
        [wood, rothcSplits.wood],
      ] as const) {
        pools[0] = (pools[0] ?? 0) + share * split.dpm;
        pools[1] = (pools[1] ?? 0) + share * split.rpm;
        pools[3] = (pools[3] ?? 0) + share * split.hum;
      }
      return pools;
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
