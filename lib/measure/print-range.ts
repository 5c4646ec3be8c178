import { requireRecord } from "../check/index.ts";
import { addAlike } from "./arithmetic.ts";
import { Checks } from "./checks.ts";
import { significantText } from "./decimal.ts";
import { kindOfDimension } from "./kinds.ts";
import type { PrintOptions } from "./print-options.ts";
import { printParts, printQuantity, requirePrintOptions } from "./print-quantity.ts";
import { isQuantity, type Quantity, type Range } from "./quantity.ts";

/**
 * Whether a value is a range: low, likely, high and what they rest on.
 *
 * @rule three quantities or numbers and a list of sources
 * @source common practice
 * @example
 * isRange({ low: 1, likely: 2, high: 3, basis: ["common practice"] }) // => true
 */
export function isRange(value: unknown): value is Range<Quantity | number> {
  if (typeof value !== "object" || value === null) return false;
  const { low, likely, high, basis } = value as Partial<Range<Quantity>>;
  const sound = (bound: unknown) => typeof bound === "number" || isQuantity(bound);
  return sound(low) && sound(likely) && sound(high) && Array.isArray(basis);
}

/** Refuses what is not three numbers, or three quantities of one dimension, all finite. */
function requireBounds(range: Range<Quantity | number>): void {
  requireRecord(range, ["range"]);
  const ends = ["low", "likely", "high"] as const;
  const of = ends.map((end) => range[end]).find(isQuantity);
  const kind = of === undefined ? undefined : kindOfDimension(of.dim);
  const checks = new Checks();
  for (const end of ends) {
    const value: unknown = range[end];
    if (of === undefined) checks.number(value, [end]);
    else if (kind !== undefined) checks.quantity(value, kind, [end]);
    else checks.attempt(() => addAlike(of, value));
  }
  checks.done();
}

function bound(value: Quantity | number, options: PrintOptions): { number: string; unit: string } {
  if (isQuantity(value)) return printParts(value, options);
  const { digits = 3, decimal = ".", grouped = true } = options;
  return { number: significantText(value, digits, { decimal, grouped }), unit: "" };
}

/**
 * A range as people read it, in one unit: "32–43 h", "3.1–3.6 cu yd". Where both ends print alike
 * there is one figure.
 *
 * @throws ProblemError as `printQuantity`
 * @rule low and high, in the unit of the high one
 * @source common practice
 * @example
 * printRange({ low: times(32, hour), likely: times(36, hour), high: times(43, hour), basis: ["common practice"] }) // => "32–43 h"
 */
export function printRange(range: Range<Quantity | number>, options: PrintOptions = {}): string {
  requireBounds(range);
  requirePrintOptions(options);
  const high = bound(range.high, options);
  const inUnit =
    isQuantity(range.high) && high.unit !== "" ? unitOption(high.unit, options) : options;
  const low = bound(range.low, inUnit);
  const isOne = low.number === high.number && low.unit === high.unit;
  const highText = isQuantity(range.high) ? printQuantity(range.high, options) : high.number;
  if (isOne) return highText;
  const dash =
    /[ \u00a0]/.test(low.number + high.number) || low.number.startsWith("-") ? " – " : "–";
  const lowText =
    low.unit === high.unit
      ? low.number
      : isQuantity(range.low)
        ? printQuantity(range.low, inUnit)
        : low.number;
  return `${lowText}${dash}${highText}`;
}

function unitOption(unit: string, options: PrintOptions): PrintOptions {
  return { ...options, unit };
}
