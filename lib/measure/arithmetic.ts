import type { Dimension, Inverse, Product } from "./dimension.ts";
import { noDimension, productDimension, sameDimension } from "./dimensions.ts";
import { isQuantity, type Named, type Quantity, quantity } from "./quantity.ts";
import { cannotCombine, mixedCurrency, noResult, type Operation } from "./refusal.ts";

const adding: Operation = {
  sign: "+",
  verb: "added to",
  allowed: "two values of one kind",
  remedy: "Add lengths to lengths, volumes to volumes, numbers to numbers.",
};
const joining: Operation = {
  sign: "+",
  verb: "joined to",
  allowed: "texts and numbers, or two values of one kind",
  remedy: "Print a quantity first, with printQuantity.",
};
const subtracting: Operation = {
  sign: "-",
  verb: "reduced by",
  allowed: "two values of one kind",
  remedy: "Subtract lengths from lengths, volumes from volumes, numbers from numbers.",
};
const multiplying: Operation = {
  sign: "*",
  verb: "multiplied by",
  allowed: "numbers and quantities",
  remedy: "Multiply numbers and quantities; read text with readNumber or readLength first.",
};
const dividing: Operation = {
  sign: "/",
  verb: "divided by",
  allowed: "numbers and quantities",
  remedy: "Divide numbers and quantities; read text with readNumber or readLength first.",
};
const takingRest: Operation = {
  sign: "%",
  verb: "divided for a remainder by",
  allowed: "two values of one kind",
  remedy: "Take the remainder of a length by a length, of a number by a number.",
};

/** The currency two quantities share; the one that has none takes the other's. */
export function sharedCurrency(operation: Operation, a: Quantity, b: Quantity): string | undefined {
  if (a.currency !== undefined && b.currency !== undefined && a.currency !== b.currency) {
    throw mixedCurrency(operation, a, b);
  }
  return a.currency ?? b.currency;
}

function isNumber(value: unknown): value is number {
  return typeof value === "number" && !Number.isNaN(value);
}

type Step = (a: number, b: number) => number;

function numbers(operation: Operation, step: Step, a: number, b: number): number {
  const result = step(a, b);
  if (!Number.isFinite(result)) throw noResult(operation, a, b);
  return result;
}

/** Whether this is a quantity without a finite value, as only a forged record is. */
function isEndless(value: unknown): boolean {
  return isQuantity(value) && !Number.isFinite(value.si);
}

function made(
  operation: Operation,
  si: number,
  dim: Dimension,
  a: unknown,
  b: unknown,
  currency?: string,
): unknown {
  if (!Number.isFinite(si) || isEndless(a) || isEndless(b)) throw noResult(operation, a, b);
  if (sameDimension(dim, noDimension)) return si;
  return quantity(si, dim, dim[3] === 0 ? undefined : currency);
}

/** Sums, differences and remainders: both of one dimension, or both numbers. */
function alike(operation: Operation, step: Step, a: unknown, b: unknown): unknown {
  if (isNumber(a) && isNumber(b)) return numbers(operation, step, a, b);
  if (typeof a === "bigint" && typeof b === "bigint") return bigints(operation, a, b);
  if (!isQuantity(a) || !isQuantity(b) || !sameDimension(a.dim, b.dim)) {
    throw cannotCombine(operation, a, b);
  }
  const currency = sharedCurrency(operation, a, b);
  return made(operation, step(a.si, b.si), a.dim, a, b, currency);
}

function bigints(operation: Operation, a: bigint, b: bigint): bigint {
  if (operation === adding) return a + b;
  if (operation === subtracting) return a - b;
  if (operation === multiplying) return a * b;
  if (b === 0n) throw noResult(operation, a, b);
  return operation === dividing ? a / b : a % b;
}

/** The sum of two quantities of one dimension or of two numbers; texts are refused. */
export function addAlike(a: unknown, b: unknown): unknown {
  return alike(adding, (x, y) => x + y, a, b);
}

/** Products and quotients: numbers and quantities of any dimension. */
function combined(operation: Operation, sign: 1 | -1, a: unknown, b: unknown): unknown {
  const step: Step = sign === 1 ? (x, y) => x * y : (x, y) => x / y;
  if (isNumber(a) && isNumber(b)) return numbers(operation, step, a, b);
  if (typeof a === "bigint" && typeof b === "bigint") return bigints(operation, a, b);
  if (isQuantity(a) && isNumber(b)) return made(operation, step(a.si, b), a.dim, a, b, a.currency);
  if (!isQuantity(b) || !(isNumber(a) || isQuantity(a))) throw cannotCombine(operation, a, b);
  const left = isQuantity(a) ? a : { si: a, dim: noDimension };
  const currency = sharedCurrency(operation, left, b);
  const dim = productDimension(left.dim, b.dim, sign);
  if (dim === undefined) throw cannotCombine(operation, a, b);
  return made(operation, step(left.si, b.si), dim, a, b, currency);
}

/**
 * The sum of two quantities of one dimension, of two numbers, or two texts joined. Money without
 * a currency takes the other's.
 *
 * @throws ProblemError for two dimensions (`wrong-unit`), nothing (`missing`), two currencies
 * (`mixed-currency`)
 * @rule only like is added to like
 * @source common practice
 * @example
 * plus(times(8, foot), times(3.5, inch)) // => 8 ft 3 1/2 in
 */
export function plus(a: number, b: number): number;
export function plus(a: string, b: string | number): string;
export function plus(a: number, b: string): string;
export function plus<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Named<D>;
export function plus(a: unknown, b: unknown): unknown {
  if (typeof a === "string" && (typeof b === "string" || isNumber(b))) return a + b;
  if (typeof b === "string" && isNumber(a)) return a + b;
  if (typeof a === "string" || typeof b === "string") throw cannotCombine(joining, a, b);
  return addAlike(a, b);
}

/**
 * The difference of two quantities of one dimension, or of two numbers.
 *
 * @throws ProblemError for two dimensions (`wrong-unit`), nothing (`missing`), two currencies
 * (`mixed-currency`)
 * @rule only like is subtracted from like
 * @source common practice
 * @example
 * minus(foot, inch) // => 11 in
 */
export function minus(a: number, b: number): number;
export function minus<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Named<D>;
export function minus(a: unknown, b: unknown): unknown {
  return alike(subtracting, (x, y) => x - y, a, b);
}

/**
 * The product of numbers and quantities: a length times a length is an area, a price per volume
 * times a volume is money.
 *
 * @throws ProblemError for anything else (`wrong-unit`, `missing`), two currencies
 * (`mixed-currency`), a power beyond the fourth (`wrong-unit`)
 * @rule exponents of dimensions add
 * @source common practice
 * @example
 * times(times(4, foot), times(8, foot)) // => 32 sq ft
 */
export function times(a: number, b: number): number;
export function times<D extends Dimension>(a: number, b: Quantity<D>): Named<D>;
export function times<D extends Dimension>(a: Quantity<D>, b: number): Named<D>;
export function times<A extends Dimension, B extends Dimension>(
  a: Quantity<A>,
  b: Quantity<B>,
): Named<Product<A, B>>;
export function times(a: unknown, b: unknown): unknown {
  return combined(multiplying, 1, a, b);
}

/**
 * The quotient of numbers and quantities: a volume over an area is a length, like over like is a
 * number.
 *
 * @throws ProblemError as `times`, and for a division by zero (`unreadable`)
 * @rule exponents of dimensions subtract
 * @source common practice
 * @example
 * over(cubicYard, cubicFoot) // => 27
 */
export function over(a: number, b: number): number;
export function over<D extends Dimension>(a: Quantity<D>, b: number): Named<D>;
export function over<D extends Dimension>(a: number, b: Quantity<D>): Named<Inverse<D>>;
export function over<A extends Dimension, B extends Dimension>(
  a: Quantity<A>,
  b: Quantity<B>,
): Named<Product<A, Inverse<B>>>;
export function over(a: unknown, b: unknown): unknown {
  return combined(dividing, -1, a, b);
}

// What is left below a hair of the divisor is the dust of binary fractions: 1 ft % 1 in is nothing.
function rest(a: number, b: number): number {
  const turns = a / b;
  const whole = Math.round(turns);
  return Math.abs(turns - whole) <= 1e-12 * Math.abs(turns) ? 0 : a % b;
}

/**
 * What remains of a quantity when another of its kind is taken out as often as it goes; numbers
 * likewise. It has the sign of the first.
 *
 * @throws ProblemError for two dimensions (`wrong-unit`), nothing (`missing`), a divisor of zero
 * (`unreadable`)
 * @rule a less b times the whole turns of a in b
 * @source common practice
 * @example
 * remainder(times(99, inch), times(2, foot)) // => 3 in
 */
export function remainder(a: number, b: number): number;
export function remainder<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Named<D>;
export function remainder(a: unknown, b: unknown): unknown {
  return alike(takingRest, isQuantity(a) ? rest : (x, y) => x % y, a, b);
}
