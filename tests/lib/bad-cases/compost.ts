import { kilogram, readLength } from "../../../lib/index.ts";
import {
  area,
  choice,
  count,
  density,
  label,
  length,
  mass,
  number,
  remark,
  type Sizes,
  volume,
} from "./leaves.ts";
import { but, list, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const fromNothing: Sizes = { zero: "fine" };
const tenInches = readLength("10 in");

/** A row of advice: between what depths something is spread. */
export function depthAdvice(use: Readonly<Record<string, ReturnType<typeof label>>>) {
  return record({
    ...use,
    depthLow: length("1 in", fromNothing),
    depthHigh: length("3 in", { zero: "contradiction" }),
    source: label("common practice"),
  });
}

/** A least depth above the greatest, as both kinds of advice refuse it. */
export const depthsSwapped = {
  what: "a least depth above the greatest",
  with: { "advice.depthLow": tenInches.ok ? tenInches.value : undefined },
  outcome: "contradiction",
  at: ["depthLow"],
} as const;

const loss = (good: number) =>
  but(number(good, { optional: true, zero: "fine" }), variant("zero", 0, "fine", "contradiction"));
const shareOf = (good: number) => number(good, { zero: "fine" });

const orNull = (part: ReturnType<typeof number>) => but(part, variant("null", null, "fine"));
const heapMaterial = record({
  material: label("leaves"),
  carbonLow: shareOf(0.4),
  carbonHigh: shareOf(0.5),
  nitrogenLow: shareOf(0.01),
  nitrogenHigh: shareOf(0.02),
  moisture: orNull(shareOf(0.4)),
  density: but(density("70 kg/m3"), variant("null", null, "missing")),
  source: label("common practice"),
});
const heapPart = record({
  material: heapMaterial,
  // A mass is as good.
  amount: but(volume("4 cu ft", fromNothing), variant("another dimension", kilogram, "fine")),
  season: remark("spring"),
});
const nutrientRowWith = (nitrogenLow: ReturnType<typeof number>) =>
  record({
    material: label("compost"),
    nitrogenLow,
    nitrogen: number(0.02, { zero: "contradiction" }),
    nitrogenHigh: number(0.03, { zero: "contradiction" }),
    phosphate: orNull(shareOf(0.01)),
    potash: orNull(shareOf(0.01)),
    source: label("common practice"),
  });
const nutrientRow = nutrientRowWith(shareOf(0.01));
const heapParts = list([heapPart, heapPart], { empty: "missing" });

export const compostCases: FolderCases = {
  bedsDressed: {
    takes: {
      compost: volume("9 cu ft", fromNothing),
      area: area("29 sq ft"),
      depth: length("1 in"),
    },
  },
  compostSalts: {
    takes: { conductivity: number(3, fromNothing), extract: choice("1:1") },
  },
  dressingForNitrogen: {
    takes: {
      need: record({
        crops: label("vegetables"),
        nitrogen: shareOf(2),
        source: label("common practice"),
      }),
      // Without nitrogen no depth meets a need.
      nutrients: nutrientRowWith(number(0.01)),
      options: record({ densityDry: density("400 kg/m3"), years: count(5, { optional: true }) }),
    },
  },
  fertiliserFor: { takes: { nitrogen: mass("2 lb", fromNothing), grade: number(0.46) } },
  heapMix: { takes: { parts: heapParts } },
  nitrogenBalance: {
    takes: {
      area: area("500 sq ft", fromNothing),
      need: record({
        crops: label("vegetables"),
        nitrogen: shareOf(2),
        source: label("common practice"),
      }),
      supply: mass("1 lb", fromNothing),
    },
  },
  nitrogenForWood: {
    takes: { area: area("500 sq ft", fromNothing), depth: length("1 in", fromNothing) },
  },
  nutrientSupply: {
    takes: {
      area: area("500 sq ft", fromNothing),
      nutrients: nutrientRow,
      options: record({
        depth: length("1 in", fromNothing),
        densityDry: density("400 kg/m3"),
        years: count(5, { optional: true }),
      }),
    },
  },
  ratioPartner: {
    takes: {
      parts: heapParts,
      material: record({
        material: label("straw"),
        carbonLow: shareOf(0.5),
        carbonHigh: shareOf(0.5),
        nitrogenLow: shareOf(0.004),
        nitrogenHigh: shareOf(0.005),
        moisture: orNull(shareOf(0.1)),
        density: but(density("130 kg/m3"), variant("null", null, "fine")),
        source: label("common practice"),
      }),
      options: record({ goal: number(30, { optional: true }) }, { optional: true }),
    },
  },
  carbonNitrogen: {
    takes: {
      inputs: list(
        [
          record({
            mass: mass("40 lb", fromNothing),
            carbon: shareOf(0.45),
            nitrogen: shareOf(0.01),
            moisture: number(0.1, { zero: "fine", optional: true }),
          }),
          record({
            mass: mass("90 lb", fromNothing),
            carbon: shareOf(0.45),
            nitrogen: shareOf(0.03),
          }),
        ],
        { empty: "missing" },
      ),
    },
  },
  compostOveruse: { takes: { options: record({ because: remark("bed 3") }, { optional: true }) } },
  dressingAdvice: {
    takes: {
      depth: length("2 in", fromNothing),
      advice: depthAdvice({ use: label("garden bed") }),
    },
    together: [depthsSwapped],
  },
  heapYield: {
    takes: {
      raw: volume("1 cu yd", fromNothing),
      options: record(
        { lossLow: loss(0.3), lossLikely: loss(0.5), lossHigh: loss(0.6) },
        { optional: true },
      ),
    },
    together: [
      {
        what: "a likely loss above the high one",
        with: { "options.lossLikely": 0.8 },
        outcome: "contradiction",
        at: ["lossLikely"],
      },
    ],
  },
  moisturePartner: {
    takes: {
      mass: mass("90 lb", fromNothing),
      options: record({
        moisture: number(0.8, { zero: "contradiction" }),
        partner: number(0.1, { zero: "fine" }),
        goal: number(0.55, { zero: "contradiction" }),
      }),
    },
    together: [
      {
        what: "a goal that mixing cannot reach",
        with: { "options.goal": 0.95 },
        outcome: "contradiction",
        at: ["goal"],
      },
    ],
  },
  topDressing: {
    takes: {
      area: area("32 sq ft", fromNothing),
      options: record({
        depth: length("1 in", fromNothing),
        onHand: volume("1 cu ft", { zero: "fine", optional: true }),
        bag: volume("1 cu ft", { optional: true }),
      }),
    },
  },
};
