import type { Path, Problem } from "./problem.ts";

/** A path in words: `["beds", 3, "length"]` is "beds, row 3, length". */
export function placeInWords(path: Path): string {
  return path.map((step) => (typeof step === "number" ? `row ${step}` : step)).join(", ");
}

/** The sentence a person reads: the place, what was received, what is allowed, what to do. */
export function sentence(problem: Problem): string {
  const place = placeInWords(problem.path);
  const got = problem.received === "" ? "nothing was given" : `received “${problem.received}”`;
  return `${place}: ${got}; allowed is ${problem.allowed}. ${problem.remedy}`;
}
