import { foot, isQuantity, kilogram } from "../../../lib/index.ts";
import { leaf, type Outcome, type Part, variant } from "./shape.ts";

// Any problem may be the answer, or none where the part is not looked at: what is tried is that
// nothing breaks, that no NaN comes out, and that the problems say what to do.
const any: readonly Outcome[] = [
  "fine",
  "missing",
  "unreadable",
  "wrong-unit",
  "unknown",
  "too-small",
  "too-large",
  "contradiction",
  "duplicate",
  "mixed-currency",
  "unpriced",
  "no-fit",
];

const whole = [
  variant("nothing", undefined, ...any),
  variant("null", null, ...any),
  variant("text", "4x8", ...any),
  variant("a negative number", -1, ...any),
  variant("a number absurdly large", 1e30, ...any),
  variant("an empty record", {}, ...any),
  variant("an empty list", [], ...any),
];
const notANumber = variant("NaN", Number.NaN, ...any);
const forQuantity = [
  ...whole,
  variant("another dimension", kilogram, ...any),
  variant("a length", foot, ...any),
  variant("a quantity of NaN", { ...foot, si: Number.NaN }, ...any),
  variant("an endless mass", { ...kilogram, si: Number.POSITIVE_INFINITY }, ...any),
];

/** A value that another function made, with every part of it replaced by what is none. */
export function made(good: unknown): Part {
  return { ...brokenAnywhere(good), asMade: true };
}

function brokenAnywhere(good: unknown): Part {
  if (isQuantity(good)) return leaf(good, forQuantity);
  if (Array.isArray(good)) {
    // Entries are alike: the first stands for all.
    const first = good.slice(0, 1).map((entry) => ({
      key: 1,
      part: brokenAnywhere(entry),
      around: (other: unknown) => good.with(0, other),
    }));
    return { ...leaf(good, whole), inner: first };
  }
  if (typeof good === "number") return leaf(good, [...whole, notANumber]);
  if (typeof good !== "object" || good === null) return leaf(good, whole);
  const inner = Object.entries(good).map(([key, value]) => ({
    key,
    part: brokenAnywhere(value),
    around: (other: unknown) => ({ ...good, [key]: other }),
  }));
  return { ...leaf(good, whole), inner };
}
