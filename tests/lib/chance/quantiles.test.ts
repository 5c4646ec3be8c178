import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandOf } from "../../../lib/chance/quantiles.ts";
import { ProblemError, quantilesOf } from "../../../lib/index.ts";

// Minus nothing is nothing here.
const value = fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((x) => x + 0);
const values = fc.array(value, { minLength: 1 });

describe("quantiles", () => {
  it("are the places of the sorted values, in proportion between two", () => {
    expect(quantilesOf([10, 20, 30, 40, 50], [0.1, 0.5, 0.9])).toEqual([14, 30, 46]);
    expect(quantilesOf([4], [0, 0.3, 1])).toEqual([4, 4, 4]);
  });

  it("lie within the values, rise with the share, and do not hang on the order", () => {
    fc.assert(
      fc.property(values, (given) => {
        const found = quantilesOf(given, [0, 0.1, 0.5, 0.9, 1]);
        expect(found[0]).toBe(Math.min(...given));
        expect(found[4]).toBe(Math.max(...given));
        for (let at = 1; at < found.length; at += 1)
          expect(found[at]).toBeGreaterThanOrEqual(found[at - 1] ?? 0);
        expect(quantilesOf([...given].reverse(), [0.1, 0.5])).toEqual(found.slice(1, 3));
      }),
    );
  });

  it("are a band's three figures", () => {
    fc.assert(
      fc.property(values, (given) => {
        const [low, likely, high] = quantilesOf(given, [0.1, 0.5, 0.9]);
        expect(bandOf(Float64Array.from(given))).toEqual({ low, likely, high });
      }),
    );
  });

  it("are refused of nothing, and of what is no number", () => {
    expect(() => quantilesOf([], [0.5])).toThrow(ProblemError);
    expect(() => quantilesOf([1, Number.NaN], [0.5])).toThrow(/values/);
    expect(() => quantilesOf([1, 2], [1.5])).toThrow(/shares/);
  });
});
