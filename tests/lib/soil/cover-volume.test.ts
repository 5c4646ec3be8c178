import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverVolume, foot, inch, metre, squareMetre, times } from "../../../lib/index.ts";
import { refusals, wrong } from "./at-hand.ts";

describe("coverVolume", () => {
  it("keeps the volume when an area is split", () => {
    const m2 = fc.double({ min: 0, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(m2, m2, (a, b) => {
        const volume = (m: number) => coverVolume(times(m, squareMetre), times(3, inch)).si;
        expect(volume(a) + volume(b)).toBeCloseTo(volume(a + b), 8);
      }),
    );
  });

  it("is none at no depth", () => {
    expect(coverVolume(squareMetre, times(0, inch)).si).toBe(0);
  });

  it("refuses areas and depths that cannot be", () => {
    expect(refusals(() => coverVolume(wrong(undefined), wrong(3)))).toEqual([
      "missing area",
      "wrong-unit depth",
    ]);
    expect(refusals(() => coverVolume(wrong(foot), times(-1, metre)))).toEqual([
      "wrong-unit area",
      "too-small depth",
    ]);
    expect(refusals(() => coverVolume(times(-1, squareMetre), times(99, metre)))).toEqual([
      "too-small area",
      "too-large depth",
    ]);
  });
});
