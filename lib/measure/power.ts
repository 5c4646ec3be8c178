import { over, times } from "./arithmetic.ts";
import type { Dimension, Inverse, NoDimension, Product } from "./dimension.ts";
import { isQuantity, type Named, type Quantity, quantity } from "./quantity.ts";
import { cannotCombine, noResult, type Operation } from "./refusal.ts";

const raising: Operation = {
  sign: "**",
  verb: "raised to",
  allowed: "a number, or a quantity to a whole power from -4 to 4",
  remedy: "Raise a length to 2 for an area, to 3 for a volume.",
};
const turning: Operation = {
  sign: "-",
  verb: "made negative from",
  allowed: "a number or a quantity",
  remedy: "Give a number or a quantity.",
};

type Square<D extends Dimension> = Product<D, D>;
type Cube<D extends Dimension> = Product<Square<D>, D>;
type Raised<D extends Dimension, N extends number> = N extends 0
  ? NoDimension
  : N extends 1
    ? D
    : N extends 2
      ? Square<D>
      : N extends 3
        ? Cube<D>
        : N extends -1
          ? Inverse<D>
          : N extends -2
            ? Inverse<Square<D>>
            : N extends -3
              ? Inverse<Cube<D>>
              : Dimension;

/**
 * A number to any power, or a quantity to a whole one from -4 to 4.
 *
 * @throws ProblemError for another power of a quantity (`wrong-unit`), no finite result
 * (`unreadable`)
 * @rule exponents of the dimension are multiplied by the power
 * @source common practice
 * @example
 * power(times(2, foot), 3) // => 8 cu ft
 */
export function power(base: number, exponent: number): number;
export function power<D extends Dimension, const N extends number>(
  base: Quantity<D>,
  exponent: N,
): Named<Raised<D, N>>;
export function power(base: unknown, exponent: unknown): unknown {
  if (typeof exponent !== "number" || Number.isNaN(exponent)) {
    throw cannotCombine(raising, base, exponent);
  }
  if (typeof base === "number" && !Number.isNaN(base)) {
    const result = base ** exponent;
    if (!Number.isFinite(result)) throw noResult(raising, base, exponent);
    return result;
  }
  if (!isQuantity(base) || !Number.isInteger(exponent) || Math.abs(exponent) > 4) {
    throw cannotCombine(raising, base, exponent);
  }
  let result: Quantity | number = 1;
  for (let turn = 0; turn < Math.abs(exponent); turn += 1) {
    result = times(result as Quantity, base) as Quantity | number;
  }
  return exponent < 0 ? over(1, result as Quantity) : result;
}

/**
 * A quantity or number with the other sign; zero stays zero.
 *
 * @throws ProblemError for anything else (`wrong-unit`, `missing`)
 * @rule zero less the value
 * @source common practice
 * @example
 * negative(times(2, inch)) // => -2 in
 */
export function negative(value: number): number;
export function negative<D extends Dimension>(value: Quantity<D>): Named<D>;
export function negative(value: unknown): unknown {
  if (typeof value === "bigint") return -value;
  if (typeof value === "number" && Number.isFinite(value)) return 0 - value;
  if (!isQuantity(value)) throw cannotCombine(turning, 0, value);
  return quantity(0 - value.si, value.dim, value.currency);
}

/**
 * The size of a quantity or number without its sign.
 *
 * @throws ProblemError for anything else (`wrong-unit`, `missing`)
 * @rule the value, or its negative where it is below zero
 * @source common practice
 * @example
 * absolute(negative(inch)) // => 1 in
 */
export function absolute(value: number): number;
export function absolute<D extends Dimension>(value: Quantity<D>): Named<D>;
export function absolute(value: unknown): unknown {
  if (typeof value === "number" && Number.isFinite(value)) return Math.abs(value);
  if (!isQuantity(value)) throw cannotCombine({ ...turning, verb: "sized against" }, 0, value);
  return quantity(Math.abs(value.si), value.dim, value.currency);
}
