import { sharedCurrency } from "./arithmetic.ts";
import { type CalendarDate, dateBefore, isCalendarDate } from "./calendar.ts";
import type { Dimension } from "./dimension.ts";
import { sameDimension } from "./dimensions.ts";
import { isQuantity, type Quantity } from "./quantity.ts";
import { cannotCombine, noResult, type Operation } from "./refusal.ts";

function comparing(sign: string): Operation {
  return {
    sign,
    verb: "compared with",
    allowed: "two values of one kind",
    remedy: "Compare lengths with lengths, numbers with numbers, text with text.",
  };
}

/** How far apart two values are, where a hair of binary dust counts as nothing. */
function gap(a: number, b: number): number {
  if (a === b) return 0;
  const apart = a - b;
  return Math.abs(apart) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b)) ? 0 : apart;
}

type Test = (difference: number) => boolean;

function ordered(sign: string, test: Test, a: unknown, b: unknown): boolean {
  if (typeof a === "string" && typeof b === "string") return test(a < b ? -1 : a > b ? 1 : 0);
  const plain = typeof a === "number" || typeof a === "bigint";
  if (plain && typeof b === typeof a && !Number.isNaN(a) && !Number.isNaN(b)) {
    return test(a < (b as typeof a) ? -1 : a > (b as typeof a) ? 1 : 0);
  }
  if (isQuantity(a) && isQuantity(b) && sameDimension(a.dim, b.dim)) {
    sharedCurrency(comparing(sign), a, b);
    if (!Number.isFinite(a.si) || !Number.isFinite(b.si)) throw noResult(comparing(sign), a, b);
    return test(gap(a.si, b.si));
  }
  if (isCalendarDate(a) && isCalendarDate(b)) {
    return test(dateBefore(a, b) ? -1 : dateBefore(b, a) ? 1 : 0);
  }
  throw cannotCombine(comparing(sign), a, b);
}

/**
 * Whether the first is less: quantities of one dimension, numbers, texts, or dates. Quantities
 * that differ by less than a part in 10¹² count as equal, so that 12 in is not less than 1 ft.
 *
 * @throws ProblemError for two kinds (`wrong-unit`), nothing (`missing`), two currencies
 * (`mixed-currency`)
 * @rule only like is compared with like
 * @source common practice
 * @example
 * less(inch, foot) // => true
 */
export function less(a: number, b: number): boolean;
export function less(a: string, b: string): boolean;
export function less(a: CalendarDate, b: CalendarDate): boolean;
export function less<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): boolean;
export function less(a: unknown, b: unknown): boolean {
  return ordered("<", (difference) => difference < 0, a, b);
}

/**
 * Whether the first is less than the second or equal to it; kinds and equality as for `less`.
 *
 * @throws ProblemError as `less`
 * @rule only like is compared with like
 * @source common practice
 * @example
 * atMost(times(12, inch), foot) // => true
 */
export function atMost(a: number, b: number): boolean;
export function atMost(a: string, b: string): boolean;
export function atMost(a: CalendarDate, b: CalendarDate): boolean;
export function atMost<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): boolean;
export function atMost(a: unknown, b: unknown): boolean {
  return ordered("<=", (difference) => difference <= 0, a, b);
}

/**
 * Whether the first is more; kinds and equality as for `less`.
 *
 * @throws ProblemError as `less`
 * @rule only like is compared with like
 * @source common practice
 * @example
 * more(cubicYard, cubicMetre) // => false
 */
export function more(a: number, b: number): boolean;
export function more(a: string, b: string): boolean;
export function more(a: CalendarDate, b: CalendarDate): boolean;
export function more<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): boolean;
export function more(a: unknown, b: unknown): boolean {
  return ordered(">", (difference) => difference > 0, a, b);
}

/**
 * Whether the first is more than the second or equal to it; kinds and equality as for `less`.
 *
 * @throws ProblemError as `less`
 * @rule only like is compared with like
 * @source common practice
 * @example
 * atLeast(pound, times(16, ounce)) // => true
 */
export function atLeast(a: number, b: number): boolean;
export function atLeast(a: string, b: string): boolean;
export function atLeast(a: CalendarDate, b: CalendarDate): boolean;
export function atLeast<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): boolean;
export function atLeast(a: unknown, b: unknown): boolean {
  return ordered(">=", (difference) => difference >= 0, a, b);
}

/**
 * Whether two values are the same: quantities of one dimension, currency and size (equality as for
 * `less`), dates of the same day, anything else as `===`. Never an error.
 *
 * @rule equal kind and equal value
 * @source common practice
 * @example
 * same(times(12, inch), foot) // => true
 * same(foot, pound) // => false
 */
export function same(a: unknown, b: unknown): boolean {
  if (isQuantity(a) && isQuantity(b)) {
    const oneMoney =
      a.currency === undefined || b.currency === undefined || a.currency === b.currency;
    return sameDimension(a.dim, b.dim) && oneMoney && gap(a.si, b.si) === 0;
  }
  if (isCalendarDate(a) && isCalendarDate(b)) {
    return a.year === b.year && a.month === b.month && a.day === b.day;
  }
  return a === b;
}
