import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, inch, mulchYears, times } from "../../../lib/index.ts";

const inches = (n: number) => times(n, inch);
const bark = {
  mulch: "bark",
  ...{ lossLow: inches(0.5), loss: inches(1), lossHigh: inches(1.5) },
  source: "common practice",
};

describe("a mulch through the years", () => {
  it("an inch of bark is renewed each year (common practice)", () => {
    const years = mulchYears(bark, { depth: inch, years: 4 });
    for (const { laid } of years) expect(amount(laid.likely, inch)).toBeCloseTo(1, 12);
  });

  it("takes its depth at first, then what it lost, never more than its depth", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6, noNaN: true }), (depth) => {
        const [first, ...rest] = mulchYears(bark, { depth: inches(depth) });
        expect(amount(first?.laid.likely ?? inch, inch)).toBeCloseTo(depth, 9);
        for (const { laid, left } of rest) {
          expect(laid.low.si).toBeLessThanOrEqual(laid.high.si);
          expect(left.low.si).toBeLessThanOrEqual(left.high.si);
          expect(laid.likely.si + left.likely.si).toBeCloseTo(inches(depth).si, 9);
        }
      }),
    );
  });
});
