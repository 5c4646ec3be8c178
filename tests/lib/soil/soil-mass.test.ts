import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubicMetre, foot, soilMass, times } from "../../../lib/index.ts";
import { material, refusals, wrong } from "./at-hand.ts";

const soil = material("soil", 1200, 1300, 1800);

describe("soilMass", () => {
  it("weighs each state by its three densities", () => {
    const mass = soilMass(times(2, cubicMetre), soil);
    expect(mass.dry.likely.si).toBeCloseTo(2400, 9);
    expect(mass.moist.low.si).toBeCloseTo(2340, 9);
    expect(mass.wet.high.si).toBeCloseTo(3960, 9);
    expect(mass.wet.basis).toEqual(["common practice"]);
  });

  it("adds up: two loads weigh what one of both weighs", () => {
    const load = fc.double({ min: 0, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(load, load, (a, b) => {
        const mass = (m3: number) => soilMass(times(m3, cubicMetre), soil).moist.likely.si;
        expect(mass(a) + mass(b)).toBeCloseTo(mass(a + b), 5);
      }),
    );
  });

  it("refuses volumes and rows that cannot be", () => {
    expect(refusals(() => soilMass(wrong(undefined), soil))).toEqual(["missing volume"]);
    expect(refusals(() => soilMass(wrong(foot), soil))).toEqual(["wrong-unit volume"]);
    expect(refusals(() => soilMass(times(-1, cubicMetre), soil))).toEqual(["too-small volume"]);
    expect(refusals(() => soilMass(times(1e7, cubicMetre), soil))).toEqual(["too-large volume"]);
    expect(refusals(() => soilMass(cubicMetre, { ...soil, densityDry: wrong(1200) }))).toEqual([
      "wrong-unit material.densityDry",
    ]);
    expect(refusals(() => soilMass(cubicMetre, { ...soil, densityWet: wrong(undefined) }))).toEqual(
      ["missing material.densityWet"],
    );
    const swapped = {
      ...soil,
      densityDryLow: soil.densityDryHigh,
      densityDryHigh: soil.densityDryLow,
    };
    expect(refusals(() => soilMass(cubicMetre, swapped))).toEqual([
      "contradiction material.densityDry",
    ]);
  });
});
