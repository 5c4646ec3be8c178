import { describe, expect, it } from "vitest";
import { cubicMetre, foot, heapYield, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

describe("heapYield", () => {
  it("leaves all of a heap that loses nothing, zero being a value and not a blank", () => {
    const kept = heapYield(cubicMetre, { lossLow: 0, lossLikely: 0, lossHigh: 0 });
    expect([kept.low.si, kept.likely.si, kept.high.si]).toEqual([1, 1, 1]);
  });

  it("gives least where most is lost, and doubles with the heap", () => {
    const one = heapYield(cubicMetre);
    expect(one.low.si).toBeLessThan(one.likely.si);
    expect(one.likely.si).toBeLessThan(one.high.si);
    expect(heapYield(times(2, cubicMetre)).low.si).toBeCloseTo(2 * one.low.si, 12);
  });

  it("refuses heaps and shares that cannot be", () => {
    expect(refusals(() => heapYield(wrong(undefined)))).toEqual(["missing raw"]);
    expect(refusals(() => heapYield(wrong(foot), { lossHigh: 1 }))).toEqual([
      "wrong-unit raw",
      "too-large lossHigh",
    ]);
    expect(refusals(() => heapYield(times(-1, cubicMetre), { lossLow: -0.1 }))).toEqual([
      "too-small raw",
      "too-small lossLow",
    ]);
    expect(refusals(() => heapYield(cubicMetre, { lossLikely: 0.1 }))).toEqual([
      "contradiction lossLikely",
    ]);
    expect(refusals(() => heapYield(cubicMetre, { lossLow: wrong("30 %") }))).toEqual([
      "unreadable lossLow",
    ]);
  });
});
