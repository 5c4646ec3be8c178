import { describe, expect, it } from "vitest";
import { janssenLeft, janssenTemperature, times, year } from "../../../lib/index.ts";

const left = (age: number, years: number, temperatureC = 9) =>
  janssenLeft(times(years, year), { age, temperatureC });

describe("organic matter by its apparent age", () => {
  // Worked by hand from the equation: DERIVED.
  it.each([
    [1, 9, [0.202, 0.103, 0.07, 0.045, 0.028]],
    [4, 9, [0.774, 0.643, 0.558, 0.455, 0.339]],
    [6, 9, [0.868, 0.775, 0.7072, 0.613, 0.49]],
    [14, 9, [0.962, 0.928, 0.899, 0.851, 0.766]],
    [1, 12, [0.162, 0.083, 0.057, 0.038, 0.024]],
    [17, 12, [0.965, 0.934, 0.907, 0.862, 0.784]],
  ])("of age %i at %i °C leaves less and less (DERIVED)", (age, temperatureC, shares) => {
    [1, 2, 3, 5, 10].forEach((years, at) => {
      expect(left(age, years, temperatureC)).toBeCloseTo(shares[at] ?? -1, 3);
    });
  });

  it("leaves all at once and where it is frozen", () => {
    expect(left(4, 0)).toBe(1);
    expect(left(4, 20, -1)).toBe(1);
  });

  it("goes on from where it was: older matter rots on as if begun earlier", () => {
    expect(left(3, 5) / left(3, 2)).toBeCloseTo(left(5, 3), 12);
  });

  it("rots no slower the warmer it is", () => {
    const factors = Array.from({ length: 60 }, (_, at) => janssenTemperature(at - 20));
    factors.forEach((factor, at) => {
      expect(factor).toBeGreaterThanOrEqual(factors[at - 1] ?? 0);
    });
    expect(janssenTemperature(12)).toBeCloseTo(1.26, 2);
    expect(janssenTemperature(40)).toBe(4);
  });
});
