import type { Path, Problem, ProblemCode } from "./problem.ts";
import { ProblemError } from "./problem-error.ts";
import { isPath, isProblem, problemCodes } from "./problems-of.ts";
import { requireRecord } from "./require-record.ts";
import { pathInWords, problemInWords } from "./words.ts";

function refusal(code: ProblemCode, path: Path, allowed: string, value: unknown): ProblemError {
  const isPlain = typeof value === "string" || typeof value === "number";
  const received = code === "missing" ? "" : isPlain ? String(value) : `a ${typeof value}`;
  return new ProblemError([{ code, path, allowed, received, remedy: `Give ${allowed}.` }]);
}

function requirePath(path: unknown): void {
  if (isPath(path)) return;
  const code = path === undefined || path === null ? "missing" : "unreadable";
  const step = Array.isArray(path) ? path.findIndex((each) => !isPath([each])) : -1;
  const place = step < 0 ? ["path"] : ["path", step + 1];
  throw refusal(code, place, "a list of names and row numbers", path);
}

function requireOthers(also: unknown): void {
  const others: readonly unknown[] = Array.isArray(also) ? also : [undefined];
  const at = others.findIndex((path) => !isPath(path));
  if (at < 0) return;
  const missing = also === null || (Array.isArray(also) && (others[at] ?? null) === null);
  const place = Array.isArray(also) ? ["also", at + 1] : ["also"];
  const value = Array.isArray(also) ? others[at] : also;
  throw refusal(missing ? "missing" : "unreadable", place, "paths of other places", value);
}

/**
 * A path in words: `["beds", 3, "length"]` is "beds, row 3, length"; the empty path is no words.
 *
 * @throws ProblemError for what is no list of names and numbers (`missing`, `unreadable`)
 * @rule numbers are rows, counted from 1
 * @source common practice
 * @example
 * placeInWords(["beds", 3, "length"]) // => "beds, row 3, length"
 */
export function placeInWords(path: Path): string {
  requirePath(path);
  return pathInWords(path);
}

/**
 * The sentence a person reads: the place, what was received and what is wrong with it, what is
 * allowed, what to do, and other places it concerns.
 *
 * @throws ProblemError for what is no problem record (`missing`, `unreadable`, `unknown`)
 * @rule place: what was received and why not; what is allowed. What to do.
 * @source common practice
 * @example
 * sentence({ code: "too-small", path: ["kerf"], allowed: "a length from 0 in to 1/2 in", received: "-1 in", remedy: "Give at least 0 in." }) // => "kerf: “-1 in” is too small; allowed is a length from 0 in to 1/2 in. Give at least 0 in."
 */
export function sentence(problem: Problem): string {
  requireRecord(problem, ["problem"]);
  const { code, path, also } = problem as Partial<Problem>;
  if (code === undefined || code === null || !problemCodes.includes(code)) {
    const kind = code === undefined || code === null ? "missing" : "unknown";
    throw refusal(kind, ["code"], `one of ${problemCodes.join(", ")}`, code);
  }
  requirePath(path);
  if (also !== undefined) requireOthers(also);
  if (!isProblem(problem)) {
    throw refusal("unreadable", ["problem"], "texts for allowed, received and remedy", problem);
  }
  return problemInWords(problem);
}
