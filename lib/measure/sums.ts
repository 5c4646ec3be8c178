import { ProblemError } from "../check/index.ts";
import { addAlike } from "./arithmetic.ts";
import { less, more } from "./compare.ts";
import { roundHalfAway, tidy } from "./decimal.ts";
import type { Dimension } from "./dimension.ts";
import { sameDimension } from "./dimensions.ts";
import { isQuantity, type Named, type Quantity, quantity } from "./quantity.ts";
import { receivedText } from "./received.ts";
import { cannotCombine } from "./refusal.ts";

function nothingGiven(what: string): ProblemError {
  return new ProblemError([
    {
      code: "missing",
      path: [what],
      allowed: "at least one value",
      received: "",
      remedy: "Give at least one value, or for a sum the zero to start from.",
    },
  ]);
}

function noList(values: unknown): ProblemError {
  return new ProblemError([
    {
      code: values === undefined || values === null ? "missing" : "unreadable",
      path: ["values"],
      allowed: "a list of numbers or of quantities of one dimension",
      received: receivedText(values ?? undefined),
      remedy: "Give a list, as [foot, inch].",
    },
  ]);
}

type Pair = (a: number, b: number) => boolean;

function extreme(what: string, isBetter: Pair, values: readonly unknown[]): unknown {
  if (values.length === 0) throw nothingGiven(what);
  // A single value is compared with itself, so that it is refused where it is none.
  isBetter(values[0] as number, values[0] as number);
  const endless = values.find((value) => value === Infinity || value === -Infinity);
  if (endless !== undefined) throw cannotCombine(measuring, endless, "a finite value");
  return values.reduce((best, value) => (isBetter(value as number, best as number) ? value : best));
}

/**
 * The least of numbers or of quantities of one dimension.
 *
 * @throws ProblemError where none is given (`missing`) or they are of two kinds (`wrong-unit`)
 * @rule the one that no other is less than
 * @source common practice
 * @example
 * least(foot, yard, inch) // => 1 in
 */
export function least(...values: number[]): number;
export function least<D extends Dimension>(
  first: Quantity<D>,
  ...others: Quantity<NoInfer<D>>[]
): Named<D>;
export function least(...values: unknown[]): unknown {
  return extreme("least", less, values);
}

/**
 * The greatest of numbers or of quantities of one dimension.
 *
 * @throws ProblemError where none is given (`missing`) or they are of two kinds (`wrong-unit`)
 * @rule the one that no other is more than
 * @source common practice
 * @example
 * greatest(foot, yard, inch) // => 3 ft
 */
export function greatest(...values: number[]): number;
export function greatest<D extends Dimension>(
  first: Quantity<D>,
  ...others: Quantity<NoInfer<D>>[]
): Named<D>;
export function greatest(...values: unknown[]): unknown {
  return extreme("greatest", more, values);
}

/**
 * The sum of a list of numbers or of quantities of one dimension. An empty list needs `zero`, as
 * `zeroOf(cubicYard)`, to say what it is nothing of.
 *
 * @throws ProblemError for no list, or an empty one without a zero (`missing`), two kinds (`wrong-unit`), two
 * currencies (`mixed-currency`)
 * @rule each is added to the sum of those before it
 * @source common practice
 * @example
 * sumOf([foot, foot, inch]) // => 2 ft 1 in
 */
export function sumOf(values: Iterable<number>, zero?: number): number;
export function sumOf<D extends Dimension>(
  values: Iterable<Quantity<D>>,
  zero?: Quantity<NoInfer<D>>,
): Named<D>;
export function sumOf(values: Iterable<unknown>, zero?: unknown): unknown {
  const isList = typeof values === "object" && values !== null && Symbol.iterator in values;
  if (!isList) throw noList(values);
  const all = zero === undefined ? [...values] : [zero, ...values];
  if (all.length === 0) throw nothingGiven("sumOf");
  const [first] = all;
  // Adding nothing to the first refuses it where it is no value, in a list of one as well.
  const nothing = isQuantity(first) ? quantity(0, first.dim, first.currency) : 0;
  return all.reduce(addAlike, nothing);
}

/**
 * Nothing of the unit's kind: `zeroOf(cubicYard)` is a volume of zero.
 *
 * @throws ProblemError for what is not a quantity (`wrong-unit`, `missing`)
 * @rule zero of the same dimension and currency
 * @source common practice
 * @example
 * zeroOf(cubicFoot) // => 0 cu ft
 */
export function zeroOf<D extends Dimension>(unit: Quantity<D>): Named<D> {
  const isSound = isQuantity(unit) && Number.isFinite(unit.si);
  if (!isSound) throw cannotCombine(measuring, unit, "a unit");
  return quantity(0, unit.dim, unit.currency);
}

const measuring = {
  sign: "in",
  verb: "measured in",
  allowed: "a quantity and a unit of its kind",
  remedy: "Give a quantity and a unit of the same kind, as a length and foot.",
};

/**
 * A quantity as a number of units: `amount(length, foot)`. Binary dust after the fifteenth digit is
 * taken off, so whole numbers of units are whole.
 *
 * @throws ProblemError where the unit is of another kind (`wrong-unit`) or zero (`too-small`)
 * @rule the quantity over the unit
 * @source common practice
 * @example
 * amount(cubicYard, cubicFoot) // => 27
 */
export function amount<D extends Dimension>(q: Quantity<D>, unit: Quantity<NoInfer<D>>): number {
  const fits = isQuantity(q) && isQuantity(unit) && sameDimension(q.dim, unit.dim);
  if (!fits || !Number.isFinite(q.si) || !Number.isFinite(unit.si))
    throw cannotCombine(measuring, q, unit);
  if (unit.si === 0) throw stepTooSmall(unit, "unit");
  return tidy(q.si / unit.si);
}

function stepTooSmall(step: unknown, name: string): ProblemError {
  return new ProblemError([
    {
      code: "too-small",
      path: [name],
      allowed: "more than zero",
      received: receivedText(step),
      remedy: "Give a value above zero.",
    },
  ]);
}

/**
 * A quantity or number rounded up to a multiple of a step, as bags or half yards are sold. A
 * value within a billionth of a step above a multiple counts as that multiple.
 *
 * @throws ProblemError for two kinds (`wrong-unit`), a step of zero or less (`too-small`)
 * @rule the least multiple of the step that is not less than the value
 * @source common practice
 * @example
 * roundUpTo(times(2.1, cubicYard), times(0.5, cubicYard)) // => 2.5 cu yd
 */
export function roundUpTo(value: number, step: number): number;
export function roundUpTo<D extends Dimension>(
  value: Quantity<D>,
  step: Quantity<NoInfer<D>>,
): Named<D>;
export function roundUpTo(value: unknown, step: unknown): unknown {
  const zero = isQuantity(step) ? quantity(0, step.dim, step.currency) : 0;
  if (!more(step as number, zero as number)) throw stepTooSmall(step, "step");
  less(value as number, step as number); // refuses two kinds
  if (!Number.isFinite(Number(isQuantity(value) ? value.si : value)) || step === Infinity) {
    throw cannotCombine(measuring, value, step);
  }
  if (isQuantity(value) && isQuantity(step)) {
    const currency = value.currency ?? step.currency;
    return quantity(upTo(value.si, step.si), value.dim, currency);
  }
  return upTo(value as number, step as number);
}

function upTo(value: number, step: number): number {
  const turns = value / step;
  const nearest = roundHalfAway(turns, 0);
  const count =
    turns - nearest > 1e-9
      ? Math.ceil(turns)
      : nearest >= turns - 1e-9
        ? nearest
        : Math.ceil(turns);
  return tidy(count * step) + 0;
}
