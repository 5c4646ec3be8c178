import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lognormal, normal, triangular, weibull } from "../../../lib/chance/distributions.ts";
import { published } from "../../published/compare.ts";

const share = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });

/** The normal distribution function, from the series of the error function (DLMF 7.6.1). */
function belowNormal(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < 200; n += 1) {
    term *= (-x * x) / (2 * n);
    sum += term / (2 * n + 1);
  }
  return 0.5 + sum / Math.sqrt(2 * Math.PI);
}

describe("the normal distribution turned round", () => {
  it.each([
    [0.9, "1.2816"],
    [0.95, "1.6449"],
    [0.975, "1.9600"],
    [0.99, "2.3263"],
    [0.995, "2.5758"],
    [0.999, "3.0902"],
  ])("%d has %s, as every table of it (from memory)", (u, printed) => {
    published(normal(u), printed);
    published(-normal(1 - u), printed);
  });

  it("gives back the share by its distribution function", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1 - 1e-4, noNaN: true }), (u) => {
        expect(Math.abs(belowNormal(normal(u)) - u)).toBeLessThan(1e-11);
      }),
    );
  });

  it("goes on smoothly from one approximation to the next, and far out", () => {
    for (const u of [0.075, 0.925, Math.exp(-25)])
      expect(Math.abs(normal(u * (1 + 1e-9)) - normal(u * (1 - 1e-9)))).toBeLessThan(1e-7);
    // A hundred-thousandth: 4.264890793922825 by the error function's asymptotic series.
    expect(normal(1e-5)).toBeCloseTo(-4.264890793922825, 10);
  });
});

describe("a triangle turned round", () => {
  const triangle = { low: 2, likely: 5, high: 14 };

  it("gives back the share by its distribution function", () => {
    fc.assert(
      fc.property(share, (u) => {
        const x = triangular(u, triangle);
        const below = x <= 5 ? (x - 2) ** 2 / (12 * 3) : 1 - (14 - x) ** 2 / (12 * 9);
        expect(below).toBeCloseTo(u, 9);
      }),
    );
  });

  it("has the mean of its three figures", () => {
    const n = 20_000;
    const mean = Array.from({ length: n }, (_, i) => triangular((i + 0.5) / n, triangle)).reduce(
      (sum, x) => sum + x / n,
      0,
    );
    expect(mean).toBeCloseTo(7, 3);
  });

  it("is its likely figure where it has no width, and may lean against a side", () => {
    expect(triangular(0.3, { low: 4, likely: 4, high: 4 })).toBe(4);
    expect(triangular(0, { low: 0, likely: 0, high: 1 })).toBe(0);
    expect(triangular(1, { low: 0, likely: 1, high: 1 })).toBe(1);
  });
});

describe("lognormal and Weibull turned round", () => {
  it("have their median and scale where they must", () => {
    expect(lognormal(0.5, 12, 0.4)).toBeCloseTo(12, 12);
    expect(weibull(1 - Math.exp(-1), 15, 2.5)).toBeCloseTo(15, 10);
    expect(weibull(0.5, 15, 1)).toBeCloseTo(15 * Math.LN2, 10);
  });

  it("rise with the share", () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        if (a >= b) return;
        expect(normal(a)).toBeLessThanOrEqual(normal(b));
        expect(weibull(a, 9, 2)).toBeLessThanOrEqual(weibull(b, 9, 2));
      }),
    );
  });
});
