import { describe, expect, it } from "vitest";
import {
  type CompostNutrients,
  dressingForNitrogen,
  kilogramPerCubicMetre,
  type NutrientNeed,
  nitrogenBalance,
  nutrientSupply,
  squareFoot,
  times,
} from "../../../lib/index.ts";
import { dataRow } from "../../published/soil-rows.ts";

const nutrients = dataRow<CompostNutrients>("compostNutrients", "material", "compost");
const need: NutrientNeed = { crops: "vegetables", nitrogen: 2, source: "umd-fertilizer" };
const densityDry = times(392, kilogramPerCubicMetre);

describe("a dressing for nitrogen", () => {
  it("frees just what is needed in its year, as the supply itself says", () => {
    for (const years of [1, 5, 12]) {
      const { depth } = dressingForNitrogen(need, nutrients, { densityDry, years });
      const area = times(300, squareFoot);
      const supply = nutrientSupply(area, nutrients, { depth: depth.likely, densityDry, years });
      const last = supply.freed.at(-1);
      if (!last) throw new Error("no year");
      const { short, over } = nitrogenBalance(area, need, last.likely);
      expect(short.si + over.si).toBeCloseTo(0, 9);
    }
  });

  it("is deepest in the first year, and carries the caution where it is over an inch", () => {
    const deep = (nitrogen: number, years: number) =>
      dressingForNitrogen({ ...need, nitrogen }, nutrients, { densityDry, years });
    expect(deep(2, 1).depth.likely.si).toBeGreaterThan(deep(2, 5).depth.likely.si);
    expect(deep(6, 1).cautions.map(({ id }) => id)).toEqual(["compost-overuse"]);
    expect(deep(1, 5).cautions).toEqual([]);
    expect(deep(0, 1).depth.likely.si).toBe(0);
  });

  it("is refused where the compost may hold none, unless nothing is needed", () => {
    const poor = { ...nutrients, nitrogenLow: 0 };
    expect(() => dressingForNitrogen(need, poor, { densityDry })).toThrow(/no depth meets/);
    expect(dressingForNitrogen({ ...need, nitrogen: 0 }, poor, { densityDry }).depth.high.si).toBe(
      0,
    );
  });
});
