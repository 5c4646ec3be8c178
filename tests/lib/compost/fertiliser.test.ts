import { describe, expect, it } from "vitest";
import {
  amount,
  fertiliserFor,
  inch,
  nitrogenForWood,
  pound,
  squareFoot,
  times,
} from "../../../lib/index.ts";

describe("fertiliser for nitrogen", () => {
  it("is the nitrogen itself of pure nitrogen, and more the poorer it is", () => {
    expect(amount(fertiliserFor(times(3, pound), 1), pound)).toBeCloseTo(3, 12);
    expect(amount(fertiliserFor(times(3, pound), 0.1), pound)).toBeCloseTo(30, 12);
  });
});

describe("nitrogen for wood that is dug in", () => {
  it("grows with area and depth, and is none for none", () => {
    const at = (area: number, inches: number) =>
      amount(nitrogenForWood(times(area, squareFoot), times(inches, inch)).likely, pound);
    expect(at(2000, 3)).toBeCloseTo(6 * at(1000, 1), 9);
    expect(at(0, 3)).toBe(0);
  });
});
