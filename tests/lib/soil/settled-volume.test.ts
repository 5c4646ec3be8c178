import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubicMetre, foot, settledVolume, settlingOrder, times } from "../../../lib/index.ts";
import { refusals, settling, wrong } from "./at-hand.ts";

describe("settledVolume", () => {
  it("is the way back from settlingOrder", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e4, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (m3, share) => {
          const row = settling(share);
          const order = settlingOrder(times(m3, cubicMetre), row).likely;
          expect(settledVolume(order, row).likely.si).toBeCloseTo(m3, 6);
        },
      ),
    );
  });

  it("leaves least where most is lost", () => {
    const left = settledVolume(times(10, cubicMetre), settling(0.1, 0.2, 0.4));
    expect([left.low.si, left.likely.si, left.high.si]).toEqual([6, 8, 9]);
  });

  it("refuses rows and volumes that cannot be", () => {
    expect(refusals(() => settledVolume(wrong(undefined), settling(0)))).toEqual([
      "missing placed",
    ]);
    expect(refusals(() => settledVolume(wrong(foot), settling(0)))).toEqual(["wrong-unit placed"]);
    expect(refusals(() => settledVolume(times(-1, cubicMetre), settling(0.95)))).toEqual([
      "too-small placed",
      "too-large material.settleLow",
      "too-large material.settleLikely",
      "too-large material.settleHigh",
    ]);
    expect(refusals(() => settledVolume(cubicMetre, settling(0.5, 0.1, 0.2)))).toEqual([
      "contradiction material.settleLikely",
    ]);
  });
});
