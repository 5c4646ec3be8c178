import { cubicFoot, kilogramPerCubicMetre, money, readLength, times } from "../../../lib/index.ts";
import {
  area,
  choice,
  count,
  density,
  fixed,
  label,
  length,
  name,
  number,
  price,
  remark,
  type Sizes,
  volume,
  yesNo,
} from "./leaves.ts";
import { but, list, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const fromNothing: Sizes = { zero: "fine" };
const inches = (n: number) => {
  const reading = readLength(`${n} in`);
  return reading.ok ? reading.value : undefined;
};

/** A bed by its sides, as far as soil is concerned. */
export const sides = record({
  length: length("8 ft"),
  width: length("4 ft"),
  section: record({ thickness: length("1 1/2 in", fromNothing) }),
});

const share = (good: number) => number(good, fromNothing);
const settling = {
  material: label("compost"),
  settleLow: share(0.1),
  settleLikely: number(0.2, { zero: "contradiction" }),
  settleHigh: number(0.3, { zero: "contradiction" }),
  settleSource: label("common practice"),
};
const settles = record(settling);

const kgPerM3 = (n: number) => density(`${n} kg/m3`);
const weights = {
  material: label("compost"),
  densityDryLow: kgPerM3(300),
  densityDry: kgPerM3(350),
  densityDryHigh: kgPerM3(400),
  densityMoistLow: kgPerM3(500),
  densityMoist: kgPerM3(600),
  densityMoistHigh: kgPerM3(700),
  densityWetLow: kgPerM3(800),
  densityWet: kgPerM3(900),
  densityWetHigh: kgPerM3(1000),
  source: label("common practice"),
};
export const weighed = record(weights);
/** A material as the published table has it: how it settles and what it weighs. */
export const soilMaterial = record({ ...settling, ...weights });
/** The same with what of it is organic, and how fast that rots. */
export const rottingMaterial = record({
  ...settling,
  ...weights,
  organicLow: share(0.3),
  organic: number(0.4, { zero: "contradiction" }),
  organicHigh: number(0.6, { zero: "contradiction" }),
  organicVolume: share(1),
  porosity: share(0.8),
  decayLow: share(0.1),
  decay: number(0.2, { zero: "contradiction" }),
  decayHigh: number(0.3, { zero: "contradiction" }),
  organicSource: label("common practice"),
  decaySource: label("common practice"),
});

export const dug = record({
  soil: label("common earth"),
  bankToLoose: number(1.25),
  bankToCompacted: number(0.9),
});
const many = (optional = true) => count(2, { optional });
const depthNow = length("3 in", { ...fromNothing, optional: true });
const wanted = length("10 in", fromNothing);

// A spring has one of two depths: without it, it has neither.
export const eitherDepth = but(
  length("1 in", { ...fromNothing, optional: true }),
  variant("nothing", undefined, "contradiction"),
);
export const when = {
  month: count(4, { optional: true }),
  from: count(1, { ...fromNothing, optional: true }),
  until: count(2, { ...fromNothing, optional: true }),
};
const weatherMonth = record({
  temperatureC: number(9, { zero: "fine", negative: "fine" }),
  rainMm: number(60, fromNothing),
  panMm: number(40, fromNothing),
});

export const soilLayers = list(
  [
    record({
      material: rottingMaterial,
      depth: length("9 in", fromNothing),
      settled: yesNo(false, { optional: true }),
      age: count(3, { ...fromNothing, optional: true }),
      left: list([number(0.9, fromNothing)], { empty: "contradiction", optional: true }),
    }),
  ],
  { empty: "missing" },
);
const springs = [
  record({ material: rottingMaterial, depth: eitherDepth, ...when }),
  record({ material: rottingMaterial, holds: eitherDepth, ...when }),
];
/** How far to look, how it rots and how sure that is. */
export const lookedAhead = {
  years: count(3, { optional: true }),
  startMonth: count(4, { optional: true }),
  seasonMonths: count(6, { optional: true }),
  model: choice("simple", { optional: true }),
  pace: number(1, { ...fromNothing, optional: true }),
  weather: list(
    Array.from({ length: 12 }, () => weatherMonth),
    { empty: "missing", optional: true },
  ),
  clayPercent: number(20, { ...fromNothing, optional: true }),
  draws: count(4, { ...fromNothing, optional: true }),
  seed: count(4, { ...fromNothing, optional: true }),
};

const range = record({
  low: volume("1 cu yd", { ...fromNothing }),
  likely: volume("2 cu yd", { ...fromNothing }),
  high: volume("3 cu yd", { ...fromNothing }),
  basis: label("common practice"),
});
const filled = record({
  area: area("32 sq ft", fromNothing),
  there: volume("1 cu ft", fromNothing),
  settled: volume("20 cu ft", fromNothing),
  order: range,
  surplus: volume("1 cu ft", fromNothing),
  // Depths are not added up.
  ...{ depth: fixed(inches(10)), depthNow: fixed(inches(3)), missing: fixed(inches(7)) },
});

const inSizes = (good: number, sizes: Sizes = {}) =>
  but(
    number(good, { optional: true, ...sizes }),
    // A volume is allowed there as well, a length is not.
    variant("a quantity", inches(3), "wrong-unit"),
    variant("text", "three", "unreadable"),
  );
// A material's row, or its name alone.
const row = but(
  record({ material: name("topsoil") }),
  variant("text for a record", "sand", "fine"),
);

const offer = (form: string, size: string) =>
  record({
    name: label("North yard, row 3"),
    form: choice(form),
    size: volume(size),
    price: price("6.50", { zero: "fine" }),
    from: inSizes(2, { zero: "fine" }),
    step: inSizes(1),
    limit: inSizes(500, { zero: "fine" }),
    delivery: price("45", { zero: "fine", optional: true }),
  });

const bedTooThin = {
  what: "boards as thick as the bed is wide",
  with: { "bed.width": inches(12), "bed.section.thickness": inches(6) },
  outcome: "contradiction",
  at: ["thickness"],
} as const;
const sharesOutOfOrder = {
  what: "a likely share above the high one",
  with: { "material.settleLikely": 0.6 },
  outcome: "contradiction",
  at: ["settleLikely"],
} as const;
export const densitiesOutOfOrder = {
  what: "a likely density above the high one",
  with: { "material.densityMoist": times(2000, kilogramPerCubicMetre) },
  outcome: "contradiction",
  at: ["densityMoist"],
} as const;

export const soilCases: FolderCases = {
  areaCovered: { takes: { volume: volume("1 cu yd", fromNothing), depth: length("3 in") } },
  bagCount: { takes: { volume: volume("1 cu yd", fromNothing), bag: volume("1 cu ft") } },
  bagMass: {
    takes: { bag: volume("1 cu ft"), material: weighed },
    together: [densitiesOutOfOrder],
  },
  bagsOrBulk: {
    takes: {
      volume: volume("3 cu yd", fromNothing),
      offers: list([offer("bag", "2 cu ft"), offer("bulk", "1 cu yd")], { empty: "missing" }),
    },
    together: [
      {
        what: "a step of half a bag",
        with: { "offers.1.step": 0.5 },
        outcome: "contradiction",
        at: ["offers", 1, "step"],
      },
      {
        what: "dollars and euros",
        with: { "offers.1.price": money(6, "USD"), "offers.2.price": money(40, "EUR") },
        outcome: "mixed-currency",
        at: ["offers", 2, "price"],
      },
    ],
  },
  bedFill: {
    takes: {
      bed: sides,
      material: settles,
      options: record({ depth: wanted, depthNow, count: many() }),
    },
    together: [bedTooThin, sharesOutOfOrder],
  },
  bedInside: { takes: { bed: sides }, together: [bedTooThin] },
  bedVolume: { takes: { bed: sides, depth: wanted }, together: [bedTooThin] },
  blendVolumes: {
    takes: {
      volume: volume("3 cu yd", fromNothing),
      parts: list(
        [
          record({ material: row, share: number(2) }),
          record({ material: name("compost"), share: number(1) }),
        ],
        { empty: "missing" },
      ),
    },
  },
  coverVolume: { takes: { area: area("32 sq ft", fromNothing), depth: wanted } },
  depthCovered: { takes: { volume: volume("1 cu yd", fromNothing), area: area("32 sq ft") } },
  dugSoil: {
    takes: { bed: sides, soil: dug, options: record({ depth: wanted, count: many() }) },
    together: [bedTooThin],
  },
  layeredFill: {
    takes: {
      bed: sides,
      layers: list(
        [
          record({ material: settles, thickness: wanted }),
          record({ material: settles, thickness: length("2 in", fromNothing) }),
        ],
        { empty: "missing" },
      ),
      options: record({ depthNow, count: many() }, { optional: true }),
    },
    together: [bedTooThin],
  },
  materialDensity: {
    takes: {
      material: weighed,
      options: record({ state: choice("wet", { optional: true }) }, { optional: true }),
    },
    together: [densitiesOutOfOrder],
  },
  roomForSoil: {
    takes: {
      wall: length("11 1/4 in", { zero: "contradiction" }),
      options: record(
        {
          mulch: length("1 in", { ...fromNothing, optional: true }),
          free: length("1 in", { ...fromNothing, optional: true }),
        },
        { optional: true },
      ),
    },
    together: [
      {
        what: "more mulch than wall",
        with: { "options.mulch": inches(12) },
        outcome: "contradiction",
        at: ["wall"],
      },
    ],
  },
  settledVolume: {
    takes: { placed: volume("1 cu yd", fromNothing), material: settles },
    together: [sharesOutOfOrder],
  },
  settlingOrder: {
    takes: { settled: volume("1 cu yd", fromNothing), material: settles },
    together: [sharesOutOfOrder],
  },
  rottingBlend: {
    takes: {
      parts: list([record({ material: rottingMaterial, share: number(2) })], { empty: "missing" }),
    },
  },
  soilBlend: {
    takes: {
      parts: list([record({ material: soilMaterial, share: number(2) })], { empty: "missing" }),
    },
  },
  outsideFittedSoil: {
    takes: { options: record({ because: remark("bed 3") }, { optional: true }) },
  },
  soilYears: {
    takes: {
      layers: soilLayers,
      options: record(
        { ...lookedAhead, springs: list(springs, { empty: "fine", optional: true }) },
        { optional: true },
      ),
    },
  },
  upkeepDressing: {
    takes: {
      layers: soilLayers,
      options: record({ ...lookedAhead, material: rottingMaterial, depth: eitherDepth }),
    },
  },
  purchasesByYear: {
    takes: {
      needs: list([record({ year: name("2026"), volume: volume("9 cu ft", fromNothing) })], {
        empty: "fine",
      }),
      offers: fixed([{ form: "bag", size: cubicFoot, price: money(4, "USD") }]),
      options: record(
        { heap: volume("4 cu ft", { ...fromNothing, optional: true }) },
        { optional: true },
      ),
    },
  },
  soilMass: {
    takes: { volume: volume("1 cu yd", fromNothing), material: weighed },
    together: [densitiesOutOfOrder],
  },
  swell: {
    takes: {
      volume: volume("1 cu yd", fromNothing),
      soil: dug,
      options: record(
        { from: choice("bank", { optional: true }), to: choice("loose", { optional: true }) },
        { optional: true },
      ),
    },
  },
  swellByWeight: {
    takes: {
      soil: record({
        bank: kgPerM3(1700),
        loose: kgPerM3(1400),
        compacted: density("1900 kg/m3", { optional: true }),
      }),
    },
  },
  totalFill: { takes: { fills: list([filled, filled], { empty: "fine" }) } },
};
