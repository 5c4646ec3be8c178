import { describe, expect, it } from "vitest";
import { bedInside, bedsDressed, cubicFoot, foot, inch, times } from "../../../lib/index.ts";

describe("beds that a heap dresses", () => {
  it("are as many as its volume holds dressings", () => {
    const bed = {
      length: times(8, foot),
      width: times(4, foot),
      section: { thickness: times(1.5, inch) },
    };
    const { area } = bedInside(bed);
    // 29.06 sq ft an inch deep take 2.42 cu ft.
    expect(bedsDressed(times(13.5, cubicFoot), area, inch)).toBeCloseTo(13.5 / (29.0625 / 12), 9);
    expect(bedsDressed(times(0, cubicFoot), area, inch)).toBe(0);
  });
});
