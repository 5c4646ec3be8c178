// University of Missouri, School of Natural Resources, forestry functions: density of water as
// 1000 kg/m³ and as 62.43 lb/ft³. The Wood Handbook (GTR-190, chapter 4) has the same pair.
import { describe, it } from "vitest";
import { amount, kilogramPerCubicMetre, poundPerCubicFoot, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("measure, density of water", () => {
  it("1000 kg/m³ are 62.43 lb/ft³ (READ)", () => {
    published(amount(times(1000, kilogramPerCubicMetre), poundPerCubicFoot), "62.43");
  });
});
