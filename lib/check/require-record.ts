import type { Path, Problem } from "./problem.ts";
import { ProblemError } from "./problem-error.ts";

function refusal(value: unknown, path: Path, what: "record" | "list"): Problem {
  const isNothing = value === undefined || value === null;
  const received = isNothing
    ? ""
    : Array.isArray(value)
      ? `a list of ${value.length}`
      : typeof value === "object"
        ? "a record"
        : String(value);
  return {
    code: isNothing ? "missing" : "unreadable",
    path,
    allowed: what === "record" ? "a record of named fields" : "a list",
    received,
    remedy:
      what === "record"
        ? "Give the fields by name, as the reference lists them."
        : "Give a list, as [a, b].",
  };
}

/**
 * Throws unless the value is a record, so that asking for its fields cannot crash. Gives nothing.
 *
 * @throws ProblemError `missing` or `unreadable`
 * @rule the value is an object and no list
 * @source common practice
 * @example
 * requireRecord({ length: foot }, ["bed"]) // => undefined
 */
export function requireRecord(value: unknown, path: Path): void {
  const isRecord = typeof value === "object" && value !== null && !Array.isArray(value);
  if (!isRecord) throw new ProblemError([refusal(value, path, "record")]);
}

/**
 * Throws unless the value is a list of records, with a problem for each entry that is none. Gives
 * nothing.
 *
 * @throws ProblemError `missing` or `unreadable`, at the list or at its entries counted from 1
 * @rule a list whose every entry is an object and no list
 * @source common practice
 * @example
 * requireRecords([], ["beds"]) // => undefined
 */
export function requireRecords(value: unknown, path: Path): void {
  if (!Array.isArray(value)) throw new ProblemError([refusal(value, path, "list")]);
  const problems = value.flatMap((entry, at) =>
    typeof entry === "object" && entry !== null && !Array.isArray(entry)
      ? []
      : [refusal(entry, [...path, at + 1], "record")],
  );
  if (problems.length > 0) throw new ProblemError(problems);
}
