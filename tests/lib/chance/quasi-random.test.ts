import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { directions } from "../../../lib/chance/directions.ts";
import { quasiRandom } from "../../../lib/index.ts";

const most = directions.length + 1;
const seeds = fc.integer({ min: 0, max: 2 ** 32 - 1 });

/** Multiplies two polynomials over the field of two elements, modulo a third. */
function times(a: number, b: number, modulus: number, degree: number): number {
  let product = 0;
  for (let rest = b, shifted = a; rest > 0; rest >>>= 1) {
    if (rest & 1) product ^= shifted;
    shifted <<= 1;
    if (shifted >>> degree) shifted ^= modulus;
  }
  return product;
}

/** The order of x: a polynomial of degree n is primitive where it is 2^n - 1. */
function orderOfX(modulus: number, degree: number): number {
  let power = degree === 1 ? 1 : 2;
  const x = power;
  for (let order = 1; ; order += 1) {
    if (power === 1) return order;
    power = times(power, x, modulus, degree);
  }
}

describe("points of Sobol's sequence", () => {
  it("come of polynomials that are primitive, each once, and odd numbers below 2^place", () => {
    const seen = new Set<number>();
    for (const [degree, inner, first] of directions) {
      const polynomial = 2 ** degree + 2 * inner + 1;
      expect(orderOfX(polynomial, degree), `${degree}, ${inner}`).toBe(2 ** degree - 1);
      expect(seen.has(polynomial)).toBe(false);
      seen.add(polynomial);
      expect(first).toHaveLength(degree);
      first.forEach((number, at) => {
        expect(number % 2).toBe(1);
        expect(number).toBeLessThan(2 ** (at + 1));
      });
    }
  });

  it("fall one into each of as many strips in every dimension, whatever the seed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 }), seeds, (power, seed) => {
        const count = 2 ** power;
        for (const column of quasiRandom(count, most, { seed })) {
          const strips = new Set([...column].map((x) => Math.floor(x * count)));
          expect(strips.size).toBe(count);
          expect(Math.min(...column)).toBeGreaterThan(0);
          expect(Math.max(...column)).toBeLessThan(1);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("fall one into each box of the first two dimensions, however it is cut", () => {
    const [first = new Float64Array(), second = new Float64Array()] = quasiRandom(256, 2);
    for (let wide = 0; wide <= 8; wide += 1) {
      const boxes = new Set(
        [...first].map((x, at) => {
          const across = Math.floor(x * 2 ** wide);
          return `${across} ${Math.floor((second[at] ?? 0) * 2 ** (8 - wide))}`;
        }),
      );
      expect(boxes.size).toBe(256);
    }
  });

  it("are those known of the sequence without a shift, up to the shift (from memory)", () => {
    // 0, 1/2, 3/4, 1/4, 3/8, 7/8, 5/8, 1/8 in the first dimension: their differences digit by digit
    // do not hang on the shift.
    const cells = (column: Float64Array | undefined) =>
      [...(column ?? [])].map((x) => Math.floor(x * 8));
    const [first, second] = quasiRandom(8, 2, { seed: 3 });
    const shifted = (known: readonly number[], at: number) => known.map((cell) => cell ^ at);
    const one = cells(first);
    expect(one).toEqual(shifted([0, 4, 6, 2, 3, 7, 5, 1], one[0] ?? 0));
    const two = cells(second);
    expect(two).toEqual(shifted([0, 4, 2, 6, 3, 7, 1, 5], two[0] ?? 0));
  });

  it("settle a mean over many dimensions far sooner than chance would", () => {
    // The mean of the product of x + 1/2 over 12 dimensions is 1; a random sample of 4,096 is off by
    // about root((13/12)^12 - 1) / 64 = 0.02 at one standard error.
    const columns = quasiRandom(4096, 12, { seed: 11 });
    let sum = 0;
    for (let i = 0; i < 4096; i += 1)
      sum += columns.reduce((product, column) => product * (0.5 + (column[i] ?? 0)), 1);
    expect(Math.abs(sum / 4096 - 1)).toBeLessThan(0.003);
  });

  it("are the same for the same seed, and others for another", () => {
    expect(quasiRandom(64, 5, { seed: 9 })).toEqual(quasiRandom(64, 5, { seed: 9 }));
    expect(quasiRandom(64, 5, { seed: 9 })).not.toEqual(quasiRandom(64, 5, { seed: 10 }));
  });

  it("do not change with how many are asked for: more go on where fewer ended", () => {
    const [few] = quasiRandom(100, 3, { seed: 4 });
    const [many] = quasiRandom(1000, 3, { seed: 4 });
    expect(many?.slice(0, 100)).toEqual(few);
  });
});
