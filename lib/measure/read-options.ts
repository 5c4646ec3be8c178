import type { Path, Problem, ProblemCode, Reading } from "../check/index.ts";
import type { Bounds } from "./bounds.ts";
import type { Quantity } from "./quantity.ts";

/** How a text is read. */
export interface ReadOptions<Q> extends Bounds<Q> {
  /** Where the text stands, for the problem; nothing unless given. */
  readonly path?: Path;
  /** The unit a bare number takes, as a symbol or quantity; without one a bare number is refused. */
  readonly unit?: string | Quantity;
  /** The mark before decimals; `.` unless given. */
  readonly decimal?: "." | ",";
}

/** A reading that failed. */
export function refused(
  code: ProblemCode,
  text: unknown,
  options: { readonly path?: Path },
  allowed: string,
  remedy: string,
): { readonly ok: false; readonly problem: Problem } {
  const received = typeof text === "string" ? text : text === undefined ? "" : String(text);
  return { ok: false, problem: { code, path: options.path ?? [], allowed, received, remedy } };
}

/** A reading that succeeded. */
export function understood<T>(value: T): Reading<T> {
  return { ok: true, value };
}
