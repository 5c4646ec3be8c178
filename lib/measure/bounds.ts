import type { Problem } from "../check/index.ts";
import { roundHalfAway, significantText } from "./decimal.ts";
import type { Kind } from "./kinds.ts";
import { kindOfDimension, withArticle } from "./kinds.ts";
import { feetInchesText } from "./print-length.ts";
import { printQuantity } from "./print-quantity.ts";
import { isQuantity, type Quantity } from "./quantity.ts";

/** What is allowed of a value; `min` and `max` themselves are, `above` and `below` are not. */
export interface Bounds<Q> {
  readonly min?: Q;
  readonly max?: Q;
  readonly above?: Q;
  readonly below?: Q;
}

const sixteenthM = 0.0254 / 16;

/** A quantity with every digit it needs, so that a bound reads back as itself. */
function exactText(q: Quantity): string {
  const sixteenths = q.si / sixteenthM;
  const isLumber = Math.abs(sixteenths - roundHalfAway(sixteenths, 0)) < 1e-7;
  if (kindOfDimension(q.dim) === "length" && isLumber) return feetInchesText(q.si, false);
  const us = printQuantity(q, { system: "us", digits: 12 });
  const metric = printQuantity(q, { system: "metric", digits: 12 });
  return metric.length < us.length ? metric : us;
}

/** A bound in words. */
export function boundText(bound: Quantity | number): string {
  return isQuantity(bound) ? exactText(bound) : significantText(bound, 15);
}

/** "a length from 1 in to 100 ft", "a number above 0", "a mass". */
export function allowedText(noun: string, bounds: Bounds<Quantity | number>): string {
  const { min, max, above, below } = bounds;
  if (min !== undefined && max !== undefined) {
    return `${noun} from ${boundText(min)} to ${boundText(max)}`;
  }
  const limits = [
    min !== undefined && `of at least ${boundText(min)}`,
    above !== undefined && `above ${boundText(above)}`,
    max !== undefined && `of at most ${boundText(max)}`,
    below !== undefined && `below ${boundText(below)}`,
  ].filter((limit) => limit !== false);
  return [noun, limits.join(" and ")].join(" ").trim();
}

function sizeOf(value: Quantity | number): number {
  return isQuantity(value) ? value.si : value;
}

// A bound typed in another unit is reached in spite of the last binary digit.
function dust(a: number, b: number): number {
  return 1e-12 * Math.max(Math.abs(a), Math.abs(b));
}

/** On which side a value is out of bounds, if it is. */
export function outOfBounds(
  value: Quantity | number,
  bounds: Bounds<Quantity | number>,
): "too-small" | "too-large" | undefined {
  const size = sizeOf(value);
  const under = (bound: Quantity | number, inclusive: boolean) => {
    const short = sizeOf(bound) - size;
    const hair = dust(size, sizeOf(bound));
    return inclusive ? short > hair : short >= -hair;
  };
  const over = (bound: Quantity | number, inclusive: boolean) => {
    const long = size - sizeOf(bound);
    const hair = dust(size, sizeOf(bound));
    return inclusive ? long > hair : long >= -hair;
  };
  const { min, max, above, below } = bounds;
  if (min !== undefined && under(min, true)) return "too-small";
  if (above !== undefined && under(above, false)) return "too-small";
  if (max !== undefined && over(max, true)) return "too-large";
  if (below !== undefined && over(below, false)) return "too-large";
  return undefined;
}

/** What to do about a value out of bounds. */
export function boundRemedy(
  side: "too-small" | "too-large",
  bounds: Bounds<Quantity | number>,
): string {
  const { min, max, above, below } = bounds;
  if (side === "too-small") {
    if (min !== undefined) return `Give at least ${boundText(min)}.`;
    return above === undefined ? "Give more." : `Give more than ${boundText(above)}.`;
  }
  if (max !== undefined) return `Give at most ${boundText(max)}.`;
  return below === undefined ? "Give less." : `Give less than ${boundText(below)}.`;
}

/** The problem of a value out of bounds, or undefined. */
export function boundProblem(
  value: Quantity | number,
  noun: string,
  bounds: Bounds<Quantity | number>,
  place: Pick<Problem, "path" | "received">,
): Problem | undefined {
  const side = outOfBounds(value, bounds);
  if (side === undefined) return undefined;
  const allowed = allowedText(noun, bounds);
  return { code: side, ...place, allowed, remedy: boundRemedy(side, bounds) };
}

/** How each kind is written, for the remedy of what could not be read. */
export const kindExamples: Readonly<Record<Kind, string>> = Object.freeze({
  length: "6 ft, 72 in or 183 cm",
  area: "32 sq ft or 3 m²",
  volume: "2 cu ft, 1 cu yd or 60 L",
  mass: "40 lb or 18 kg",
  duration: "90 min, 2 h or 3 days",
  money: "23.50 or $23.50",
  temperature: "5 K",
  density: "40 lb/cu ft or 640 kg/m³",
  "price per length": "$1.20 / ft or €4 / m",
  "price per area": "$0.35 / sq ft or €4 / m²",
  "price per volume": "$38 / cu yd or €45 / m³",
  "price per mass": "$0.20 / lb or €0.40 / kg",
});

/** "a length", "money": the noun of a kind in a sentence. */
export function kindNoun(kind: Kind): string {
  return withArticle(kind);
}
