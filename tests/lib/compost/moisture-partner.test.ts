import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foot, kilogram, moisturePartner, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const kg = (n: number) => times(n, kilogram);

describe("moisturePartner", () => {
  it("brings the mix to the moisture asked for", () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (a, b, at) => {
        fc.pre(Math.abs(a - b) > 0.01);
        const goal = a + at * (b - a);
        const added = moisturePartner(kg(10), { moisture: a, partner: b, goal }).si;
        expect((10 * a + added * b) / (10 + added)).toBeCloseTo(goal, 9);
      }),
    );
  });

  it("needs nothing where the moisture is right", () => {
    expect(moisturePartner(kg(10), { moisture: 0.6, partner: 0.2, goal: 0.6 }).si).toBe(0);
  });

  it("refuses what cannot be", () => {
    const fine = { moisture: 0.8, partner: 0.4, goal: 0.6 };
    expect(refusals(() => moisturePartner(wrong(undefined), wrong({})))).toEqual([
      "missing mass",
      "missing moisture",
      "missing partner",
      "missing goal",
    ]);
    expect(refusals(() => moisturePartner(wrong(foot), { ...fine, goal: 60 }))).toEqual([
      "wrong-unit mass",
      "too-large goal",
    ]);
    expect(refusals(() => moisturePartner(kg(-1), { ...fine, partner: -0.1 }))).toEqual([
      "too-small mass",
      "too-small partner",
    ]);
    expect(refusals(() => moisturePartner(kg(1), { ...fine, goal: 0.9 }))).toEqual([
      "contradiction goal",
    ]);
    expect(refusals(() => moisturePartner(kg(1), { ...fine, goal: 0.4 }))).toEqual([
      "contradiction goal",
    ]);
  });
});
