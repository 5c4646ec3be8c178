import { describe, expect, it } from "vitest";
import {
  amount,
  cubicMetre,
  kilogramPerCubicMetre,
  materialDensity,
  soilMass,
} from "../../../lib/index.ts";
import { material, refusals, wrong } from "./at-hand.ts";

const soil = material("soil", 1200, 1300, 1800);

describe("materialDensity", () => {
  it("is what a cubic metre weighs, moist where nothing is said", () => {
    const mass = soilMass(cubicMetre, soil);
    for (const state of ["dry", "moist", "wet"] as const)
      for (const step of ["low", "likely", "high"] as const)
        expect(materialDensity(soil, { state })[step].si).toBeCloseTo(mass[state][step].si, 9);
    expect(amount(materialDensity(soil).likely, kilogramPerCubicMetre)).toBeCloseTo(1300, 9);
  });

  it("refuses rows and states that cannot be", () => {
    expect(refusals(() => materialDensity(wrong(undefined)))).toContain("missing material");
    expect(refusals(() => materialDensity(soil, { state: wrong("soaked") }))).toEqual([
      "unknown state",
    ]);
    expect(refusals(() => materialDensity({ ...soil, densityMoist: wrong(1300) }))).toEqual([
      "wrong-unit material.densityMoist",
    ]);
    expect(refusals(() => materialDensity({ ...soil, densityMoist: soil.densityWet }))).toEqual([
      "contradiction material.densityMoist",
    ]);
  });
});
