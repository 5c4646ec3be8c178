import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, inch, money, sizeAtMoisture, woodShrinkage } from "../../../lib/index.ts";
import { inches, problemsOf } from "./make.ts";

describe("woodShrinkage", () => {
  it("is nothing from fibre saturation on, all when oven-dry, and straight between", () => {
    expect(woodShrinkage(0.06, { moisture: 0.3 })).toBe(0);
    expect(woodShrinkage(0.06, { moisture: 1.2 })).toBe(0);
    expect(woodShrinkage(0.06, { moisture: 0 })).toBeCloseTo(0.06, 12);
    expect(woodShrinkage(0.06, { moisture: 0.1 })).toBeCloseTo(0.04, 12);
  });

  it.each([
    [undefined, 0.1, ["missing total"]],
    [-0.01, 0.1, ["too-small total"]],
    [6, 0.1, ["too-large total"]],
    [0.06, -1, ["too-small moisture"]],
    [0.06, 12, ["too-large moisture"]],
    [0.06, Number.NaN, ["unreadable moisture"]],
    ["6 %", 0.1, ["unreadable total"]],
  ])("refuses %j at %j", (total, moisture, problems) => {
    expect(
      problemsOf(() => woodShrinkage(total as never, { moisture: moisture as never })),
    ).toEqual(problems);
  });
});

describe("sizeAtMoisture", () => {
  const moist = fc.double({ min: 0.08, max: 0.28, noNaN: true });

  it("comes back to what it was, and shrinks as it dries", () => {
    fc.assert(
      fc.property(moist, moist, fc.constantFrom("width", "thickness"), (from, to, face) => {
        const there = sizeAtMoisture(inches(10), { from, to, face });
        const back = sizeAtMoisture(there, { from: to, to: from, face });
        expect(amount(back, inch)).toBeCloseTo(10, 9);
        if (to < from) expect(amount(there, inch)).toBeLessThanOrEqual(10);
      }),
    );
  });

  it.each([
    [inches(10), { from: 0.05, to: 0.1 }, ["too-small from"]],
    [inches(10), { from: 0.19, to: 0.4 }, ["too-large to"]],
    [inches(10), { from: 19, to: 10 }, ["too-large from", "too-large to"]],
    [inches(0), { from: 0.19, to: 0.1 }, ["too-small size"]],
    [inches(1e6), { from: 0.19, to: 0.1 }, ["too-large size"]],
    [10, { from: 0.19, to: 0.1 }, ["wrong-unit size"]],
    [money(10), { from: 0.19, to: 0.1 }, ["wrong-unit size"]],
    [inches(10), { from: 0.19, to: 0.1, face: "length" }, ["unknown face"]],
    [inches(10), undefined, ["missing options"]],
  ])("refuses %j with %j", (size, options, problems) => {
    expect(problemsOf(() => sizeAtMoisture(size as never, options as never))).toEqual(problems);
  });
});
