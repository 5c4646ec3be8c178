import fc from "fast-check";
import { ProblemError, problemsOf } from "../../../lib/index.ts";

/** Numbers over many orders of magnitude, both signs, never zero. */
export const wide = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -4, max: 5 }), fc.boolean())
  .map(([digits, place, isNegative]) => (isNegative ? -1 : 1) * digits * 10 ** place);

/** Whole sixteenths of an inch, up to 99 ft. */
export const sixteenths = fc.integer({ min: -99 * 192, max: 99 * 192 });

export const system = fc.constantFrom("us" as const, "metric" as const);
export const style = fc.constantFrom("plain" as const, "typographic" as const);

/** The problems a calculation throws; fails where it throws none. */
export function thrownBy(calculation: () => unknown) {
  try {
    calculation();
  } catch (error) {
    if (error instanceof ProblemError) return problemsOf(error) ?? [];
    throw error;
  }
  throw new Error("nothing was thrown");
}

/** The codes and places of what a calculation throws, as "too-small at kerf". */
export function codesOf(calculation: () => unknown): readonly string[] {
  return thrownBy(calculation).map(({ code, path }) => `${code} at ${path.join(".")}`);
}
