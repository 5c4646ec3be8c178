import { describe, it } from "vitest";
import {
  type CompostNutrients,
  carbonNitrogen,
  inch,
  kilogram,
  kilogramPerCubicMetre,
  nutrientSupply,
  type RottingMaterial,
  squareFoot,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";
import { knownDifference } from "./known-difference.ts";
import { dataRow } from "./soil-rows.ts";

// CalRecycle, mean of more than 1,600 composts, of the dry mass.
const row = dataRow<CompostNutrients>("compostNutrients", "material", "compost");
const supply = nutrientSupply(times(100, squareFoot), row, {
  depth: inch,
  densityDry: times(400, kilogramPerCubicMetre),
});
const percent = (kg: number | undefined) => (100 * (kg ?? 0)) / supply.dryMass.si;

describe("compost, nutrients of the mean compost", () => {
  it("nitrogen 1.53 per cent (READ)", () => {
    published(percent(supply.nitrogen.likely.si), "1.53");
  });

  it("P2O5 1.34 and K2O 1.36 per cent (READ)", () => {
    published(percent(supply.phosphate?.si), "1.34");
    published(percent(supply.potash?.si), "1.36");
  });

  it("organic matter 42.32 per cent, as the table of materials has it (READ)", () => {
    const { organic } = dataRow<RottingMaterial>("materials", "material", "compost");
    published(100 * organic, "42.32", 0.05);
  });

  it("the mean of C over N, 16.8, is not mean C over mean N (READ)", () => {
    const { ratio } = carbonNitrogen([{ mass: kilogram, carbon: 0.2219, nitrogen: 0.0153 }]);
    knownDifference(ratio ?? 0, "16.8", "a mean of quotients is no quotient of means");
    published(ratio ?? 0, "14.5");
  });
});
