import { jsonOf } from "../run/index.ts";
import type { Host, Units } from "../types/index.ts";
import type { CellFailure, Outcome } from "./outcome.ts";

/** All cells asked for as one object, keyed by cell; errors as `{"problems": […]}`. */
export function jsonText(outcomes: readonly Outcome[], host: Host, units: Units): string {
  const pairs = outcomes.map(({ cell, value, errors }) => [
    cell.name,
    errors.length > 0 ? { problems: errors.flatMap(problemsOf) } : jsonOf(value, host, units),
  ]);
  return JSON.stringify(Object.fromEntries(pairs), undefined, 2);
}

function problemsOf({ name, error }: CellFailure): readonly unknown[] {
  const { kind, message, file, line, problems } = error;
  const place = { file, line };
  if (problems.length > 0) return problems.map((problem) => ({ ...problem, ...place }));
  return [{ code: kind, path: [name], sentence: message, ...place }];
}
