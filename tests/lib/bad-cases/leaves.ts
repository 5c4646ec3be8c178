import {
  dimensionName,
  isQuantity,
  type Kind,
  kilogram,
  metre,
  type Quantity,
  quantity,
  readQuantity,
} from "../../../lib/index.ts";
import { leaf, nothing, type Outcome, type Part, type PartOptions, variant } from "./shape.ts";

/** What zero, a negative and an absurdly large value lead to; refused unless said. */
export interface Sizes extends PartOptions {
  readonly zero?: Outcome;
  readonly negative?: Outcome;
  readonly huge?: Outcome;
}

const another = (q: Quantity) => (dimensionName(q) === "mass" ? metre : kilogram);

/** A quantity, from its text or as it is; every other kind and every other size is tried. */
export function quantityOf(good: Quantity, sizes: Sizes = {}): Part {
  const { zero = "too-small", negative = "too-small", huge = "too-large" } = sizes;
  // As a record: no maker of quantities makes one of NaN.
  const sized = (si: number) => ({ ...good, si });
  return leaf(good, [
    ...nothing(sizes),
    variant("a bare number", 3, "wrong-unit"),
    variant("text", "6 fot", "unreadable"),
    variant("a record", { metres: 3 }, "unreadable"),
    variant("a list", [3], "unreadable"),
    variant("true", true, "unreadable"),
    variant("another dimension", another(good), "wrong-unit"),
    variant("NaN", sized(Number.NaN), "unreadable"),
    variant("infinity", sized(Number.POSITIVE_INFINITY), "unreadable"),
    variant("minus infinity", sized(Number.NEGATIVE_INFINITY), "unreadable"),
    variant("a bare NaN", Number.NaN, "unreadable", "wrong-unit"),
    variant("zero", sized(0), zero),
    variant("negative", sized(-Math.abs(good.si)), negative),
    variant("absurdly large", sized(1e30), huge),
  ]);
}

function reads(kind: Kind) {
  return (text: string, sizes: Sizes = {}): Part => {
    const reading = readQuantity(text, kind);
    if (!reading.ok) throw new Error(`no good value: ${text}`);
    return quantityOf(reading.value as Quantity, sizes);
  };
}

export const length = reads("length");
export const area = reads("area");
export const volume = reads("volume");
export const mass = reads("mass");
export const density = reads("density");

/** Money in dollars; `mixed` where another price of the same call sets the currency. */
export function price(text: string, sizes: Sizes & { mixed?: boolean } = {}): Part {
  const part = reads("money")(text, sizes);
  const good = part.good as Quantity;
  const inYen = quantity(Math.round(good.si), good.dim, "JPY");
  const outcome = sizes.mixed === true ? "mixed-currency" : "fine";
  return { ...part, variants: [...part.variants, variant("another currency", inYen, outcome)] };
}

/** A plain number. */
export function number(good: number, sizes: Sizes = {}): Part {
  const { zero = "too-small", negative = "too-small", huge = "too-large" } = sizes;
  return leaf(good, [
    ...nothing(sizes),
    variant("text", "three", "unreadable"),
    variant("a number as text", "3", "unreadable"),
    variant("a quantity", metre, "wrong-unit"),
    variant("a record", { count: 3 }, "unreadable"),
    variant("true", true, "unreadable"),
    variant("NaN", Number.NaN, "unreadable"),
    variant("infinity", Number.POSITIVE_INFINITY, "unreadable"),
    variant("minus infinity", Number.NEGATIVE_INFINITY, "unreadable"),
    variant("zero", 0, zero),
    variant("negative", -Math.abs(good), negative),
    variant("absurdly large", 1e30, huge),
  ]);
}

/** A whole number. */
export function count(good: number, sizes: Sizes = {}): Part {
  const part = number(good, sizes);
  return { ...part, variants: [...part.variants, variant("a fraction", good + 0.5, "unreadable")] };
}

/** One of a few words. */
export function choice(good: string, options: PartOptions = {}): Part {
  return leaf(good, [
    ...nothing(options),
    variant("an unknown word", "sideways", "unknown"),
    variant("a word in other letters", `${good.toUpperCase()}!`, "unknown"),
    variant("a key of every object", "constructor", "unknown"),
    variant("empty text", "", "unknown", "missing"),
    variant("a number", 7, "unknown", "unreadable"),
    variant("a quantity", metre, "unknown", "unreadable"),
    variant("a list", [good], "unknown", "unreadable"),
  ]);
}

/** True or false. */
export function yesNo(good: boolean, options: PartOptions = {}): Part {
  return leaf(good, [
    ...nothing(options),
    variant("text", "yes", "unknown", "unreadable"),
    variant("a number", 1, "unknown", "unreadable"),
    variant("a record", {}, "unknown", "unreadable"),
  ]);
}

/** A name that must be given. */
export function name(good: string): Part {
  return leaf(good, [
    ...nothing({}),
    variant("empty text", "", "missing"),
    variant("a blank", " ", "missing"),
    variant("a number", 7, "unreadable"),
    variant("a quantity", metre, "unreadable"),
    variant("a record", { name: good }, "unreadable"),
  ]);
}

/** A text that may be left out; anything but text is refused. */
export function remark(good: string): Part {
  return leaf(good, [
    variant("nothing", undefined, "fine"),
    variant("empty text", "", "fine"),
    variant("a number", 7, "unreadable"),
    variant("a record", {}, "unreadable"),
    variant("a list", [good], "unreadable"),
  ]);
}

/** A text that is handed through to the answer and never worked with: whatever it is, no crash. */
export function label(good: string): Part {
  return leaf(good, [
    variant("nothing", undefined, "fine", "missing"),
    variant("empty text", "", "fine", "missing"),
    variant("a number", 7, "fine", "unreadable"),
    variant("a record", {}, "fine", "unreadable"),
  ]);
}

/** A date, whole or a year. */
export function date(good: { readonly year: number }, options: PartOptions = {}): Part {
  return leaf(good, [
    ...nothing(options),
    variant("text", "2026-04-25", "unreadable"),
    variant("a bare year", 2026, "unreadable"),
    variant("a quantity", metre, "unreadable"),
    variant("no year", { month: 4 }, "unreadable"),
    variant("a month that is none", { year: 2026, month: 13 }, "unreadable"),
    variant("a day that is none", { year: 2026, month: 2, day: 30 }, "unreadable"),
    variant("NaN", { year: Number.NaN }, "unreadable"),
    variant("a year of text", { year: "2026" }, "unreadable"),
  ]);
}

/** Something that is given as it is, with nothing tried in its place; say why beside it. */
export function fixed(good: unknown): Part {
  return leaf(good, []);
}

/** A place in a path of the library: table, row, column. */
export function path(...good: readonly (string | number)[]): Part {
  return leaf(good, []);
}

/** Text that is read, as people type it; what each other text leads to is said. */
export function typed(good: string, bad: Readonly<Record<string, Outcome>>): Part {
  return leaf(good, [
    variant("nothing", undefined, "missing"),
    variant("null", null, "missing"),
    variant("empty text", "", "missing"),
    variant("blanks", " \t ", "missing"),
    variant("a key of every object", "constructor", "unreadable", "unknown"),
    variant("a number", 3, "unreadable", "wrong-unit", "unknown"),
    variant("a record", {}, "unreadable", "unknown"),
    variant("a list", ["3 ft"], "unreadable", "unknown"),
    variant("a quantity", metre, "unreadable", "unknown"),
    ...Object.entries(bad).map(([text, outcome]) => variant(`“${text}”`, text, outcome)),
  ]);
}

/** Whether a value is, or has somewhere inside, a number that is no finite number. */
export function unsound(value: unknown, seen = new Set<unknown>()): boolean {
  if (typeof value === "number") return !Number.isFinite(value);
  if (typeof value === "string") return /\b(NaN|Infinity)\b/.test(value);
  if (typeof value !== "object" || value === null || seen.has(value)) return false;
  seen.add(value);
  if (isQuantity(value)) return !Number.isFinite(value.si);
  const inside = value instanceof Map ? [...value].flat() : Object.values(value);
  return inside.some((each) => unsound(each, seen));
}
