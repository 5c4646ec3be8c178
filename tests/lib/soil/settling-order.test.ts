import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, cubicFoot, cubicMetre, foot, settlingOrder, times } from "../../../lib/index.ts";
import { refusals, settling, wrong } from "./at-hand.ts";

const shares = fc
  .array(fc.double({ min: 0, max: 0.9, noNaN: true }), { minLength: 3, maxLength: 3 })
  .map((three) => three.toSorted((a, b) => a - b));

describe("settlingOrder", () => {
  it("orders exactly the volume where nothing settles", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (m3) => {
        expect(settlingOrder(times(m3, cubicMetre), settling(0)).likely.si).toBe(m3);
      }),
    );
  });

  it("orders what stands as asked for once each share is lost", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e3, noNaN: true }), shares, (m3, [a, b, c]) => {
        const order = settlingOrder(times(m3, cubicMetre), settling(a ?? 0, b, c));
        expect(order.low.si * (1 - (a ?? 0))).toBeCloseTo(m3, 6);
        expect(order.likely.si * (1 - (b ?? 0))).toBeCloseTo(m3, 6);
        expect(order.high.si * (1 - (c ?? 0))).toBeCloseTo(m3, 6);
        expect(order.low.si).toBeLessThanOrEqual(order.likely.si);
        expect(order.likely.si).toBeLessThanOrEqual(order.high.si);
      }),
    );
  });

  it("says what the range rests on", () => {
    const row = { ...settling(0.1), settleSource: "ontario-soil-details" };
    expect(settlingOrder(cubicFoot, row).basis).toEqual(["ontario-soil-details"]);
    expect(amount(settlingOrder(times(9, cubicFoot), row).likely, cubicFoot)).toBeCloseTo(10, 9);
  });

  it("refuses rows and volumes that cannot be", () => {
    expect(refusals(() => settlingOrder(wrong(8), settling(0)))).toEqual(["wrong-unit settled"]);
    expect(refusals(() => settlingOrder(wrong(foot), settling(0)))).toEqual(["wrong-unit settled"]);
    expect(refusals(() => settlingOrder(times(-1, cubicFoot), settling(0)))).toEqual([
      "too-small settled",
    ]);
    expect(refusals(() => settlingOrder(times(1e9, cubicMetre), settling(0)))).toEqual([
      "too-large settled",
    ]);
    expect(refusals(() => settlingOrder(cubicFoot, wrong(undefined)))).toContain(
      "missing material",
    );
    expect(refusals(() => settlingOrder(cubicFoot, settling(-0.1, 0, 1)))).toEqual([
      "too-small material.settleLow",
      "too-large material.settleHigh",
    ]);
    expect(refusals(() => settlingOrder(cubicFoot, settling(0.3, 0.2, 0.4)))).toEqual([
      "contradiction material.settleLikely",
    ]);
    const words = { ...settling(0.1), settleLikely: wrong("10 %") };
    expect(refusals(() => settlingOrder(cubicFoot, words))).toEqual([
      "unreadable material.settleLikely",
    ]);
  });
});
