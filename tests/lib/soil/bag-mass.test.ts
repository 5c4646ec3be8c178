import { describe, expect, it } from "vitest";
import { bagMass, cubicFoot, cubicMetre, foot, litre, times } from "../../../lib/index.ts";
import { material, refusals, wrong } from "./at-hand.ts";

const soil = material("soil", 1200, 1300, 1800);

describe("bagMass", () => {
  it("weighs the bag moist and wet", () => {
    const found = bagMass(times(20, litre), soil);
    expect(found.moist.likely.si).toBeCloseTo(26, 9);
    expect(found.wet.low.si).toBeCloseTo(32.4, 9);
  });

  it("carries the lifting caution once the heaviest moist bag is over 23 kg", () => {
    // 1300 kg/m3 and a tenth more: 16.08 L weigh 23 kg.
    expect(bagMass(times(16, litre), soil).cautions).toEqual([]);
    const [caution, ...others] = bagMass(times(17, litre), soil).cautions;
    expect(caution).toMatchObject({ id: "lifting", because: "a bag of soil" });
    expect(others).toEqual([]);
    expect(bagMass(times(5, cubicMetre), material("iron", 4000, 4400, 4500)).cautions).toHaveLength(
      1,
    );
  });

  it("refuses bags and rows that cannot be", () => {
    expect(refusals(() => bagMass(wrong(undefined), soil))).toEqual(["missing bag"]);
    expect(refusals(() => bagMass(wrong(foot), soil))).toEqual(["wrong-unit bag"]);
    expect(refusals(() => bagMass(times(0, litre), soil))).toEqual(["too-small bag"]);
    expect(refusals(() => bagMass(times(6, cubicMetre), soil))).toEqual(["too-large bag"]);
    expect(refusals(() => bagMass(cubicFoot, wrong({ ...soil, densityWet: null })))).toEqual([
      "missing material.densityWet",
    ]);
  });
});
