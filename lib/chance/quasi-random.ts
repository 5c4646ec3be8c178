import { Given } from "../measure/given.ts";
import { directions } from "./directions.ts";
import { seededUniform } from "./seeded.ts";

const bits = 32;
const whole = 2 ** bits;

/** How the points are shifted. */
export interface QuasiRandomOptions {
  /** A whole number, 0 to 4,294,967,295; another seed gives other points as good. Default 1. */
  readonly seed?: number;
}

/**
 * Points spread evenly over a cube, for drawing several uncertain figures at once: Sobol's sequence,
 * shifted digit by digit by the seed. Means over them settle much faster than over random points. A
 * power of two of points is spread best.
 *
 * @param count of points, 1 to 1,000,000.
 * @param dimensions figures drawn at once, 1 to 24.
 * @param options `seed`, a whole number from 0, default 1.
 * @returns for each dimension its numbers, above 0 and below 1, in the order of the points.
 * @throws ProblemError where a number is of another kind or out of range.
 * @rule each bit of the seed's shift is added without carry to the point of Sobol's sequence in Gray-code order
 * @source joe-kuo-2008
 * @example
 * const [first] = quasiRandom(4, 2, { seed: 7 });
 * [...first].map((x) => Math.floor(4 * x)).sort() // => [0,1,2,3]
 */
export function quasiRandom(
  count: number,
  dimensions: number,
  options: QuasiRandomOptions = {},
): readonly Float64Array[] {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  given.whole(count, ["count"], { min: 1, max: 1_000_000 });
  given.whole(dimensions, ["dimensions"], { min: 1, max: directions.length + 1 });
  const seed = given.whole(chosen.seed ?? 1, ["seed"], { min: 0, max: whole - 1 });
  given.done();
  const shift = seededUniform(seed);
  return Array.from({ length: dimensions }, (_, dimension) =>
    column(count, directionBits(dimension), Math.floor(shift() * whole)),
  );
}

function column(count: number, direction: Uint32Array, shift: number): Float64Array {
  const points = new Float64Array(count);
  let x = 0;
  for (let i = 0; i < count; i += 1) {
    // In the middle of its cell, so that no number is 0 or 1.
    points[i] = (((x ^ shift) >>> 0) + 0.5) / whole;
    x ^= direction[trailingOnes(i)] ?? 0;
  }
  return points;
}

/** The place of the lowest 0 of a number written in twos: the digit that Gray's code changes next. */
function trailingOnes(n: number): number {
  let at = 0;
  for (let rest = n; (rest & 1) === 1; rest >>>= 1) at += 1;
  return at;
}

/** A dimension's direction numbers, each shifted to the top of 32 bits. */
export function directionBits(dimension: number): Uint32Array {
  const direction = new Uint32Array(bits);
  const row = directions[dimension - 1];
  if (row === undefined) {
    for (let i = 0; i < bits; i += 1) direction[i] = 2 ** (bits - 1 - i);
    return direction;
  }
  const [degree, inner, first] = row;
  for (let i = 0; i < degree; i += 1) direction[i] = (first[i] ?? 0) * 2 ** (bits - 1 - i);
  for (let i = degree; i < bits; i += 1) {
    const back = direction[i - degree] ?? 0;
    let value = back ^ (back >>> degree);
    for (let k = 1; k < degree; k += 1)
      if ((inner >>> (degree - 1 - k)) & 1) value ^= direction[i - k] ?? 0;
    direction[i] = value >>> 0;
  }
  return direction;
}
