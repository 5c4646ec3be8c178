import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { humusBalance, times, year } from "../../../lib/index.ts";

const balanceAfter = (years: number, options: Parameters<typeof humusBalance>[1]) =>
  humusBalance(times(years, year), options);
const positive = (max: number) => fc.double({ min: 1e-3, max, noNaN: true });

describe("the balance of humus", () => {
  it("stays where it is in the end", () => {
    fc.assert(
      fc.property(positive(50), positive(1), positive(2), (added, kept, rate) => {
        const { inTheEnd } = balanceAfter(1, { start: 0, added, kept, rate });
        if (inTheEnd === null) throw new Error("something rots");
        const { humus } = balanceAfter(13, { start: inTheEnd, added, kept, rate });
        expect(humus / inTheEnd).toBeCloseTo(1, 9);
      }),
    );
  });

  it("in two times one after the other is that in both together", () => {
    fc.assert(
      fc.property(positive(30), positive(30), positive(1), (a, b, rate) => {
        const given = { added: 3, kept: 0.3, rate };
        const first = balanceAfter(a, { start: 90, ...given });
        const then = balanceAfter(b, { start: first.humus, ...given });
        expect(then.humus).toBeCloseTo(balanceAfter(a + b, { start: 90, ...given }).humus, 8);
      }),
    );
  });

  it("leaves everything as it was where nothing rots and nothing is added", () => {
    expect(balanceAfter(40, { start: 90, rate: 0 })).toEqual({ humus: 90, inTheEnd: 90 });
    expect(balanceAfter(10, { start: 90, added: 2, kept: 0.5, rate: 0 })).toEqual({
      humus: 100,
      inTheEnd: null,
    });
  });
});
