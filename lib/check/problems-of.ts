import type { Problem, ProblemCode } from "./problem.ts";
import { ProblemError } from "./problem-error.ts";

const codes: Readonly<Record<ProblemCode, true>> = {
  missing: true,
  unreadable: true,
  "wrong-unit": true,
  "too-small": true,
  "too-large": true,
  unknown: true,
  duplicate: true,
  "mixed-currency": true,
  contradiction: true,
  unpriced: true,
  "no-fit": true,
};

/** All kinds of problem, as `Problem` lists them. */
export const problemCodes = Object.freeze(Object.keys(codes)) as readonly ProblemCode[];

/** Whether a value is a list of names and row numbers. */
export function isPath(value: unknown): boolean {
  return (
    Array.isArray(value) &&
    value.every((step) => typeof step === "string" || typeof step === "number")
  );
}

/**
 * Whether a value is a problem record, one that has been through a clone or JSON included.
 *
 * @rule a known code, a path, and texts for allowed, received and remedy
 * @source common practice
 * @example
 * isProblem({ code: "missing", path: ["beds"], allowed: "a table", received: "", remedy: "Give one." }) // => true
 * isProblem("6 fot") // => false
 */
export function isProblem(value: unknown): value is Problem {
  if (typeof value !== "object" || value === null) return false;
  const { code, path, allowed, received, remedy, also = [] } = value as Partial<Problem>;
  const texts = [allowed, received, remedy].every((text) => typeof text === "string");
  const isCode = typeof code === "string" && Object.hasOwn(codes, code);
  return isCode && isPath(path) && texts && Array.isArray(also) && also.every(isPath);
}

/**
 * The problems an error carries; undefined for an error of another kind. An error of another copy
 * of the library, or from another thread, counts where it has the same shape.
 *
 * @rule the error's list of problems
 * @source common practice
 * @example
 * problemsOf(new Error("no board")) // => undefined
 */
export function problemsOf(error: unknown): readonly Problem[] | undefined {
  if (error instanceof ProblemError) return error.problems;
  if (typeof error !== "object" || error === null) return undefined;
  const { problems } = error as { readonly problems?: unknown };
  const sound = Array.isArray(problems) && problems.length > 0 && problems.every(isProblem);
  return sound ? problems : undefined;
}
