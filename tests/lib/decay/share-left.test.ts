import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shareLeft, times, year, yearlyRate } from "../../../lib/index.ts";

const years = (n: number) => times(n, year);

describe("first-order decay", () => {
  it("gives back the share its rate was taken from", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1, noNaN: true }),
        fc.double({ min: 0.2, max: 50, noNaN: true }),
        (share, span) => {
          expect(shareLeft(yearlyRate(share, years(span)), years(span))).toBeCloseTo(share, 9);
        },
      ),
    );
  });

  it("in two times one after the other is that in both together", () => {
    const span = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(span, span, fc.double({ min: 0, max: 2, noNaN: true }), (a, b, rate) => {
        const apart = shareLeft(rate, years(a)) * shareLeft(rate, years(b));
        expect(apart).toBeCloseTo(shareLeft(rate, years(a + b)), 12);
      }),
    );
  });

  it("takes nothing at the rate 0", () => {
    expect(shareLeft(0, years(500))).toBe(1);
    expect(yearlyRate(1)).toBe(0);
  });

  it.each([
    [0.9, 0.105],
    [0.75, 0.288],
    [0.5, Math.LN2],
  ])("%d left after a year is %d a year (DERIVED)", (share, rate) => {
    expect(yearlyRate(share)).toBeCloseTo(rate, 3);
  });
});
