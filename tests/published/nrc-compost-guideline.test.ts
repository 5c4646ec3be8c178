// National Recycling Coalition guideline, US Composting Council target, and a home composter's log.
import { describe, expect, it } from "vitest";
import { amount, cubicYard, kilogram, litre, pound, soilMass } from "../../lib/index.ts";
import { published } from "./compare.ts";
import { materialRow } from "./soil-rows.ts";

const compost = materialRow("compost");

describe("compost, published weights", () => {
  const { moist } = soilMass(cubicYard, compost);

  // Whole kg/m3 in the table: half of one is 0.84 lb/yd3.
  it("a cubic yard of finished compost weighs 1000 to 1600 lb (READ-2nd)", () => {
    published(amount(moist.low, pound), "1000", 0.85);
    published(amount(moist.high, pound), "1600", 0.85);
  });

  it("1200 lb is what to aim at (READ-2nd)", () => {
    published(amount(moist.likely, pound), "1200", 0.85);
  });

  it("home compost of 0.668 kg a litre lies within (READ)", () => {
    const one = soilMass(litre, compost).moist;
    expect(amount(one.low, kilogram)).toBeLessThan(0.668);
    expect(amount(one.high, kilogram)).toBeGreaterThan(0.668);
  });

  it("a 40 lb bag of 1 ft3, and one of 0.75 ft3, lie within (READ)", () => {
    for (const bags of [27, 36]) {
      expect(bags * 40).toBeGreaterThan(amount(moist.low, pound));
      expect(bags * 40).toBeLessThan(amount(moist.high, pound));
    }
  });
});
