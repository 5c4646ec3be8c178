import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, bagCount, bedVolume, cubicFoot, foot, inch, times } from "../../../lib/index.ts";
import { bedOf, refusals, wrong } from "./at-hand.ts";

describe("bedVolume", () => {
  it("fills twenty 4 ft x 8 ft beds 11 in deep with 533 bags of 1 ft3 (common practice)", () => {
    const all = times(20, bedVolume(bedOf(96, 48), times(11, inch)));
    expect(bagCount(all, cubicFoot).bags).toBe(533);
  });

  it("is none at no depth and grows with depth", () => {
    expect(bedVolume(bedOf(96, 48), times(0, inch)).si).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 10, noNaN: true }), (ft) => {
        const less = bedVolume(bedOf(96, 48), times(ft, foot)).si;
        const more = bedVolume(bedOf(96, 48), times(ft + 1, foot)).si;
        expect(more).toBeGreaterThan(less);
      }),
    );
  });

  it("keeps the volume when a bed is split at a depth, or its inside along its length", () => {
    const whole = bedVolume(bedOf(96, 48, 0), times(11, inch)).si;
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 90 }),
        fc.integer({ min: 1, max: 10 }),
        (cut, layer) => {
          const left = bedVolume(bedOf(cut, 48, 0), times(11, inch)).si;
          const right = bedVolume(bedOf(96 - cut, 48, 0), times(11, inch)).si;
          expect(left + right).toBeCloseTo(whole, 9);
          const below = bedVolume(bedOf(96, 48, 0), times(layer, inch)).si;
          const above = bedVolume(bedOf(96, 48, 0), times(11 - layer, inch)).si;
          expect(below + above).toBeCloseTo(whole, 9);
        },
      ),
    );
  });

  it("grows eightfold when everything is doubled", () => {
    const one = bedVolume(bedOf(96, 48), times(11, inch)).si;
    const two = bedVolume(bedOf(192, 96, 3), times(22, inch)).si;
    expect(two / one).toBeCloseTo(8, 9);
  });

  it("refuses depths that cannot be", () => {
    const bed = bedOf(96, 48);
    expect(refusals(() => bedVolume(bed, wrong(undefined)))).toEqual(["missing depth"]);
    expect(refusals(() => bedVolume(bed, wrong(11)))).toEqual(["wrong-unit depth"]);
    expect(refusals(() => bedVolume(bed, wrong(cubicFoot)))).toEqual(["wrong-unit depth"]);
    expect(refusals(() => bedVolume(bed, times(-1, inch)))).toEqual(["too-small depth"]);
    expect(refusals(() => bedVolume(bed, times(21, foot)))).toEqual(["too-large depth"]);
    expect(refusals(() => bedVolume(wrong({ ...bed, width: 4 }), times(-1, inch)))).toEqual([
      "wrong-unit bed.width",
      "too-small depth",
    ]);
    expect(amount(bedVolume(bed, times(20, foot)), cubicFoot)).toBeGreaterThan(0);
  });
});
