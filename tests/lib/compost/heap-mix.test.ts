import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cubicFoot,
  cubicMetre,
  type HeapMaterial,
  type HeapPart,
  heapMix,
  kilogram,
  times,
} from "../../../lib/index.ts";
import { dataRows } from "../../published/soil-rows.ts";

const rows = dataRows("heapMaterials").map((row) => ({
  ...row,
  moisture: row.moisture === "" ? null : row.moisture,
  density: row.density === "" ? null : row.density,
})) as unknown as HeapMaterial[];
const row = (name: string) => {
  const found = rows.find(({ material }) => material === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};
const weighed = rows.filter(({ density }) => density !== null);
const part = fc.record({
  material: fc.constantFrom(...weighed),
  amount: fc.double({ min: 0.01, max: 3, noNaN: true }).map((m3) => times(m3, cubicMetre)),
  season: fc.constantFrom("spring", "summer", "autumn"),
});
const parts = fc.array(part, { minLength: 1, maxLength: 6 });
const sum = (all: readonly number[]) => all.reduce((total, each) => total + each, 0);

describe("what goes onto the heap", () => {
  it("adds up by season and in all", () => {
    fc.assert(
      fc.property(parts, (given) => {
        const mix = heapMix(given);
        expect(sum(mix.seasons.map(({ mass }) => mass.si))).toBeCloseTo(mix.mass.si, 6);
        expect(sum(mix.seasons.map(({ raw }) => raw.si))).toBeCloseTo(mix.raw.si, 9);
        expect(mix.raw.si).toBeCloseTo(sum(given.map(({ amount: each }) => each.si)), 9);
      }),
    );
  });

  it("has a ratio between those of its parts, by dry mass", () => {
    fc.assert(
      fc.property(parts, (given) => {
        const ratios = given.map((one) => heapMix([one]).ratio ?? Number.POSITIVE_INFINITY);
        const { ratio } = heapMix(given);
        expect(ratio).toBeGreaterThanOrEqual(Math.min(...ratios) - 1e-9);
        expect(ratio).toBeLessThanOrEqual(Math.max(...ratios) + 1e-9);
      }),
    );
  });

  it("does not change where a part is split in two, or given by its mass", () => {
    fc.assert(
      fc.property(parts, (given) => {
        const halves = given.flatMap((one) => {
          const half: HeapPart = { ...one, amount: times(0.5, one.amount) };
          return [half, half];
        });
        expect(heapMix(halves).ratio).toBeCloseTo(heapMix(given).ratio ?? -1, 8);
        const byMass = given.map((one) => ({
          ...one,
          amount: times(one.amount.si * (one.material.density?.si ?? 0), kilogram),
        }));
        expect(heapMix(byMass).ratio).toBeCloseTo(heapMix(given).ratio ?? -1, 8);
        expect(heapMix(byMass).raw.si).toBeCloseTo(heapMix(given).raw.si, 8);
      }),
    );
  });

  it("is not the mean of the ratios by volume: a bag of grass outweighs a bag of leaves", () => {
    const bag = times(4, cubicFoot);
    const mix = heapMix([
      { material: row("grass clippings"), amount: bag },
      { material: row("leaves"), amount: bag },
    ]);
    const alone = ["grass clippings", "leaves"].map(
      (name) => heapMix([{ material: row(name), amount: bag }]).ratio ?? 0,
    );
    expect(mix.ratio).toBeLessThan(sum(alone) / 2 - 5);
  });

  it("judges carbon and damp, and halves its volume as it ripens", () => {
    const wet = heapMix([{ material: row("grass clippings"), amount: times(1, cubicMetre) }]);
    expect([wet.fit, wet.damp]).toEqual(["too little carbon", "too wet"]);
    const dry = heapMix([{ material: row("cardboard"), amount: times(1, cubicMetre) }]);
    expect([dry.fit, dry.damp]).toEqual(["too much carbon", "too dry"]);
    expect(amount(dry.finished.likely, cubicMetre)).toBeCloseTo(0.5, 9);
  });

  // USDA NRCS National Engineering Handbook 637: 25 to 30 parts of carbon, half to six tenths water.
  it.each([
    [24.9, "too little carbon"],
    [25, "fits"],
    [30, "fits"],
    [30.1, "too much carbon"],
  ])("of %f parts of carbon to one of nitrogen: %s (READ)", (ratio, fit) => {
    const shares = { carbonLow: ratio / 100 - 0.05, carbonHigh: ratio / 100 + 0.05 };
    const material = { ...row("leaves"), ...shares, nitrogenLow: 0.01, nitrogenHigh: 0.01 };
    const parts = [{ material, amount: times(1, cubicMetre) }];
    expect(heapMix(parts).ratio).toBeCloseTo(ratio, 9);
    expect(heapMix(parts).fit).toBe(fit);
  });

  it.each([
    [0.49, "too dry"],
    [0.5, "fits"],
    [0.6, "fits"],
    [0.61, "too wet"],
  ])("of %f water: %s (READ)", (moisture, damp) => {
    const material = { ...row("leaves"), moisture };
    expect(heapMix([{ material, amount: times(1, cubicMetre) }])).toMatchObject({ damp });
  });

  it("knows no moisture and no volume where they are not known of a part, and says so", () => {
    const cow = row("cow manure, fresh");
    const mix = heapMix([
      { material: cow, amount: times(10, kilogram) },
      { material: row("leaves"), amount: times(1, cubicMetre) },
    ]);
    expect(mix).toMatchObject({ moisture: null, damp: null, unmeasured: ["cow manure, fresh"] });
    expect(amount(mix.raw, cubicMetre)).toBe(1);
    const known = heapMix([{ material: row("leaves"), amount: times(1, cubicMetre) }]);
    expect(known.unmeasured).toEqual([]);
    expect(known.moisture).toBeCloseTo(0.38, 9);
  });

  it("asks for a mass where nobody knows the density, and for something at all", () => {
    const sheep = row("sheep manure");
    expect(() => heapMix([{ material: sheep, amount: cubicMetre }])).toThrow(/density/);
    expect(heapMix([{ material: sheep, amount: times(10, kilogram) }]).mass.si).toBe(10);
    expect(() => heapMix([{ material: sheep, amount: times(0, kilogram) }])).toThrow(
      /more than nothing/,
    );
  });
});
