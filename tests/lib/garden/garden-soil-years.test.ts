import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  type Bed,
  cubicFoot,
  gardenSoilYears,
  inch,
  type RottingMaterial,
  times,
} from "../../../lib/index.ts";
import { dataRow } from "../../published/soil-rows.ts";
import { bed, feet } from "./garden.ts";

const row = (name: string) => dataRow<RottingMaterial>("materials", "material", name);
const inches = (n: number) => times(n, inch);
const fill = [
  { material: row("topsoil"), share: 2 },
  { material: row("compost"), share: 1 },
];
const choices = { fill, there: row("old bed soil") };
const low = (name: string, n: number, length = 8): Bed =>
  bed({
    bed: name,
    length: feet(length),
    width: feet(4),
    soilDepth: inches(9),
    depthNow: inches(9 - n),
  });
const dressing = [{ material: row("compost"), depth: inch }];

describe("the soil of a garden through the years", () => {
  it("fills each bed so that it settles to about what is wanted", () => {
    const { beds } = gardenSoilYears([low("A", 2)], choices);
    const half = beds[0]?.soil.months[6]?.depth.likely ?? inch;
    // Settled, less half a year's rot.
    expect(amount(half, inch)).toBeGreaterThan(8.85);
    expect(amount(half, inch)).toBeLessThan(9);
  });

  it("works out alike beds once, whatever their length", () => {
    const { unlike, beds } = gardenSoilYears([low("A", 2), low("B", 2, 12), low("C", 4)], choices);
    expect(unlike).toBe(2);
    expect(beds[0]?.soil).toBe(beds[1]?.soil);
    expect(beds[0]?.area.si).toBeLessThan(beds[1]?.area.si ?? 0);
  });

  it("takes for all beds what it takes for each, and for two halves what for a whole", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 2, max: 20 }), (n, length) => {
        const options = { ...choices, springs: dressing, draws: 20 };
        const volumes = (beds: readonly Bed[]) =>
          gardenSoilYears(beds, options).years.map((year) => year.added[0]?.volume.likely.si ?? 0);
        const [one, two] = [low("A", n, length), low("B", 8 - n, length)];
        const together = volumes([one, two]);
        const apart = volumes([one]).map((m3, at) => m3 + (volumes([two])[at] ?? 0));
        together.forEach((m3, at) => {
          expect(m3).toBeCloseTo(apart[at] ?? -1, 9);
        });
        const twice = volumes([one, { ...one, name: "C" }]);
        twice.forEach((m3, at) => {
          expect(m3).toBeCloseTo(2 * (volumes([one])[at] ?? 0), 9);
        });
      }),
      { numRuns: 10 },
    );
  });

  it("an inch each spring over one 4 ft by 8 ft bed is 2.42 cu ft", () => {
    const { years } = gardenSoilYears([low("A", 2)], { ...choices, springs: dressing });
    expect(amount(years[0]?.added[0]?.volume.likely ?? cubicFoot, cubicFoot)).toBe(0);
    expect(amount(years[1]?.added[0]?.volume.likely ?? cubicFoot, cubicFoot)).toBeCloseTo(
      29.0625 / 12,
      9,
    );
  });

  it("holds each bed at its own depth", () => {
    const springs = [{ material: row("compost"), holdsWanted: true }];
    const deep = bed({
      bed: "D",
      length: feet(8),
      width: feet(4),
      courses: 2,
      soilDepth: inches(18),
      depthNow: inches(10),
    });
    const { beds } = gardenSoilYears([low("A", 2), deep], { ...choices, springs });
    for (const [at, wanted] of [9, 18].entries()) {
      const depth = amount(beds[at]?.soil.months[60]?.depth.likely ?? inch, inch);
      expect(depth).toBeGreaterThan(wanted);
      expect(depth).toBeLessThan(wanted + 0.4);
    }
  });

  it("lays coarse wood under the fill, no deeper than what is missing", () => {
    const bottom = { material: row("coarse wood"), depth: inches(4) };
    const woodIn = (n: number) => {
      const soil = gardenSoilYears([low("A", n)], { ...choices, bottom }).beds[0]?.soil;
      const wood = soil?.materials.find(({ material }) => material === "coarse wood");
      return { wood: amount(wood?.depths[0] ?? times(0, inch), inch), soil };
    };
    // 4 in settled were 4 / 0.85 in loose.
    expect(woodIn(7).wood).toBeCloseTo(4 / (1 - row("coarse wood").settleLikely), 9);
    expect(woodIn(2).wood).toBeCloseTo(2 / (1 - row("coarse wood").settleLikely), 9);
    const [without, withWood] = [
      gardenSoilYears([low("A", 7)], choices).beds[0]?.soil,
      woodIn(7).soil,
    ];
    // Wood rots, soil hardly does: after years that bed is lower.
    expect(withWood?.months.at(-1)?.depth.likely.si).toBeLessThan(
      without?.months.at(-1)?.depth.likely.si ?? 0,
    );
  });

  it("carries the cautions of every bed, whichever comes first", () => {
    const weather = Array.from({ length: 12 }, () => ({ temperatureC: 10, rainMm: 60, panMm: 40 }));
    const rich = {
      ...choices,
      fill: [{ material: row("compost"), share: 1 }],
      there: row("topsoil"),
    };
    const options = { ...rich, model: "rothc", weather } as const;
    const ids = (beds: readonly Bed[]) =>
      gardenSoilYears(beds, options).cautions.map(({ id }) => id);
    const [full, empty] = [low("A", 0), low("B", 8)];
    expect(ids([full])).toEqual([]);
    expect(ids([full, empty])).toEqual(["outside-fitted-soil"]);
    expect(ids([empty, full])).toEqual(["outside-fitted-soil"]);
  });

  it("is nothing for a garden without beds", () => {
    expect(gardenSoilYears([], choices)).toMatchObject({ beds: [], years: [], unlike: 0 });
  });
});
