import { count, date, label, length, mass, name, number, type Sizes, volume } from "./leaves.ts";
import { but, list, record, variant } from "./shape.ts";
import { densitiesOutOfOrder, dug, rottingMaterial, sides, weighed } from "./soil.ts";
import type { FolderCases } from "./walk.ts";

const fromNothing: Sizes = { zero: "fine" };
const orNull = (good: number) => but(number(good, fromNothing), variant("null", null, "fine"));

/** Soil that is dug out, what it is fit for, and how it is moved. */
export const oldSoilCases: FolderCases = {
  barrowLoads: {
    takes: {
      volume: volume("1 cu yd", fromNothing),
      material: weighed,
      options: record(
        { barrow: volume("3 cu ft", { optional: true }), most: mass("150 lb", { optional: true }) },
        { optional: true },
      ),
    },
    together: [densitiesOutOfOrder],
  },
  diggingHours: {
    takes: {
      works: list(
        [
          record({
            work: record({
              work: label("dig"),
              hoursLow: number(2),
              hoursHigh: number(6),
              source: label("common practice"),
            }),
            volume: volume("1 cu yd", fromNothing),
          }),
        ],
        { empty: "fine" },
      ),
    },
  },
  digOut: {
    takes: {
      bed: sides,
      soil: dug,
      options: record({
        depthNow: length("9 in", fromNothing),
        wanted: length("10 in", { ...fromNothing, optional: true }),
        trench: record(
          {
            width: length("12 in", { optional: true }),
            sides: count(1, { ...fromNothing, optional: true }),
            ends: count(1, { ...fromNothing, optional: true }),
          },
          { optional: true },
        ),
        lost: number(0.02, { ...fromNothing, optional: true }),
        count: count(2, { optional: true }),
      }),
    },
  },
  heapRoom: {
    takes: {
      loose: volume("1 cu yd", fromNothing),
      options: record({
        length: length("8 ft"),
        highest: length("2 ft", { optional: true }),
        slope: number(35, { optional: true }),
      }),
    },
  },
  leadReading: {
    takes: {
      ppm: number(250, fromNothing),
      levels: list(
        [
          record({
            level: number(200),
            meaning: name("screening"),
            since: but(name("2024"), variant("null", null, "fine")),
            until: but(name("2030"), variant("null", null, "fine")),
            source: label("common practice"),
          }),
        ],
        { empty: "missing" },
      ),
      on: date({ year: 2026 }),
    },
  },
  mixAdvice: {
    takes: {
      material: rottingMaterial,
      rules: list(
        [
          record({
            mix: name("a raised bed"),
            massLow: orNull(0.05),
            massHigh: orNull(0.15),
            volumeLow: orNull(0.25),
            volumeHigh: orNull(0.5),
            source: label("common practice"),
          }),
        ],
        { empty: "fine" },
      ),
    },
  },
  rootRoom: {
    takes: {
      depth: length("9 in", fromNothing),
      crops: list(
        [
          record({
            crop: name("lettuce"),
            depth: length("16 in"),
            source: label("common practice"),
          }),
        ],
        { empty: "fine" },
      ),
    },
  },
};
