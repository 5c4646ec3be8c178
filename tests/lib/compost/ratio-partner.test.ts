import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  type HeapMaterial,
  heapMix,
  kilogram,
  ratioPartner,
  times,
} from "../../../lib/index.ts";
import { published } from "../../published/compare.ts";

const material = (
  name: string,
  carbon: number,
  nitrogen: number,
  moisture: number,
): HeapMaterial => ({
  material: name,
  ...{ carbonLow: carbon, carbonHigh: carbon, nitrogenLow: nitrogen, nitrogenHigh: nitrogen },
  moisture,
  density: null,
  source: "cornell-compost-calc",
});
const grass = material("grass", 0.45, 0.024, 0.77);
const leaves = material("leaves", 0.5, 0.0075, 0.35);
const of = (row: HeapMaterial, kg: number) => ({ material: row, amount: times(kg, kilogram) });

describe("a partner for the heap", () => {
  it("10 kg of grass take 3.5 kg of leaves for 30 to 1 (from memory, Cornell's worked mix)", () => {
    published(amount(ratioPartner([of(grass, 10)], leaves)?.mass ?? kilogram, kilogram), "3.5");
  });

  it("brings the heap to the ratio, as the heap itself says", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 20, max: 60, noNaN: true }),
        (kg, goal) => {
          const found = ratioPartner([of(grass, kg)], leaves, { goal });
          if (!found) throw new Error("leaves are richer in carbon than any of these goals");
          const mix = heapMix([of(grass, kg), { material: leaves, amount: found.mass }]);
          expect(mix.ratio).toBeCloseTo(goal, 8);
          expect(mix.moisture).toBeCloseTo(found.moisture ?? -1, 12);
        },
      ),
    );
  });

  it("moves the ratio its own way, the more the further", () => {
    const ratios = [0, 2, 5, 20].map((kg) => heapMix([of(grass, 10), of(leaves, kg)]).ratio ?? 0);
    expect([...ratios].sort((a, b) => a - b)).toEqual(ratios);
  });

  it("is none where it cannot help", () => {
    expect(ratioPartner([of(grass, 10)], material("more grass", 0.45, 0.03, 0.8))).toBeNull();
    expect(ratioPartner([of(leaves, 10)], material("straw", 0.48, 0.005, 0.1))).toBeNull();
  });

  it("is nothing where the heap is there already", () => {
    const there = material("fit", 0.3, 0.01, 0.5);
    expect(ratioPartner([of(there, 10)], leaves)?.mass.si).toBeCloseTo(0, 9);
  });
});
