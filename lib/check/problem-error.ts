import type { Problem } from "./problem.ts";
import { problemInWords } from "./words.ts";

/**
 * Thrown by every calculation that was given something it cannot use. It carries all problems of
 * the input at once; its message is their sentences, a line each, unless better words are given.
 */
export class ProblemError extends Error {
  override readonly name = "ProblemError";
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[], message?: string) {
    super(message ?? problems.map(problemInWords).join("\n"));
    this.problems = problems;
  }
}
