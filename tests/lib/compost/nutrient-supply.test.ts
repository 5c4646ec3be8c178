import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  type CompostNutrients,
  inch,
  kilogramPerCubicMetre,
  nutrientSupply,
  pound,
  poundPerCubicYard,
  squareFoot,
  times,
} from "../../../lib/index.ts";
import { dataRow } from "../../published/soil-rows.ts";

const compost = dataRow<CompostNutrients>("compostNutrients", "material", "compost");
const plain: CompostNutrients = {
  material: "compost",
  ...{ nitrogenLow: 0.01, nitrogen: 0.01, nitrogenHigh: 0.01, phosphate: null, potash: null },
  source: "common practice",
};
const thousand = times(1000, squareFoot);
// 1,000 lb/cu yd at half its mass of water.
const densityDry = times(500, poundPerCubicYard);
const supplyOf = (inches: number, row = plain, years = 5) =>
  nutrientSupply(thousand, row, { depth: times(inches, inch), densityDry, years });

describe("the nutrients of a dressing", () => {
  it("an inch on 1,000 sq ft holds 15.4 lb of nitrogen, of which 1.54 to 2.31 come free (DERIVED)", () => {
    const { dryMass, nitrogen, freed } = supplyOf(1);
    expect(amount(dryMass, pound)).toBeCloseTo(1543, 0);
    expect(amount(nitrogen.likely, pound)).toBeCloseTo(15.4, 1);
    expect(amount(freed[0]?.likely ?? pound, pound)).toBeCloseTo(1.54, 2);
    expect(amount(freed[0]?.high ?? pound, pound)).toBeCloseTo(2.31, 2);
  });

  it("spread each year, free ever more: 10, 15, 17.5 per cent (DERIVED)", () => {
    const { freed, nitrogen } = supplyOf(1);
    const shares = freed.map((year) => year.likely.si / nitrogen.likely.si);
    [0.1, 0.15, 0.175, 0.1875].forEach((share, at) => {
      expect(shares[at]).toBeCloseTo(share, 9);
    });
  });

  it("of the rest: 5, then 7, then 3 per cent at the least (READ-2nd, shares of what remains)", () => {
    const { freed, nitrogen } = supplyOf(1);
    const low = freed.map((year) => year.low.si / nitrogen.low.si);
    const second = 0.95 * 0.07;
    const third = 0.95 * 0.93 * 0.03;
    expect(low[0]).toBeCloseTo(0.05, 9);
    expect((low[1] ?? 0) - 0.05).toBeCloseTo(second, 9);
    expect((low[2] ?? 0) - (low[1] ?? 0)).toBeCloseTo(third, 9);
  });

  it("never free more than there is, and twice as much for twice the depth", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 4, noNaN: true }), (inches) => {
        const [one, two] = [supplyOf(inches, compost, 30), supplyOf(2 * inches, compost, 30)];
        for (const [at, { low, likely, high }] of one.freed.entries()) {
          expect(low.si).toBeLessThanOrEqual(likely.si);
          expect(likely.si).toBeLessThanOrEqual(high.si);
          expect(high.si).toBeLessThanOrEqual(one.nitrogen.high.si + 1e-12);
          expect(two.freed[at]?.likely.si).toBeCloseTo(2 * likely.si, 9);
        }
      }),
    );
  });

  it("carry the caution of too much over an inch, and only then", () => {
    expect(supplyOf(1).cautions).toEqual([]);
    expect(supplyOf(1.25).cautions.map(({ id }) => id)).toEqual(["compost-overuse"]);
  });

  it("say nothing of phosphate and potash where nothing is known", () => {
    expect(supplyOf(1).phosphate).toBeNull();
    const known = nutrientSupply(thousand, compost, {
      depth: inch,
      densityDry: times(400, kilogramPerCubicMetre),
    });
    expect((known.phosphate?.si ?? 0) / known.dryMass.si).toBeCloseTo(0.0134, 9);
  });
});
