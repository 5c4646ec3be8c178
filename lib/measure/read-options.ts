import {
  type Path,
  type Problem,
  type ProblemCode,
  type Reading,
  requireRecord,
} from "../check/index.ts";
import type { Bounds } from "./bounds.ts";
import { Checks } from "./checks.ts";
import type { Kind } from "./kinds.ts";
import type { Quantity } from "./quantity.ts";
import { receivedText } from "./received.ts";

/** How a text is read. */
export interface ReadOptions<Q> extends Bounds<Q> {
  /** Where the text stands, for the problem; nothing unless given. */
  readonly path?: Path;
  /** The unit a bare number takes, as a symbol or quantity; without one a bare number is refused. */
  readonly unit?: string | Quantity;
  /** The mark before decimals; `.` unless given. */
  readonly decimal?: "." | ",";
}

/**
 * Refuses options that nothing can be read by: a mark that is none, bounds that are not of the
 * kind, or not numbers where numbers are read. It is the caller's mistake, not the text's.
 */
export function requireReadOptions(options: unknown, kind: Kind | "number"): void {
  requireRecord(options, ["options"]);
  const { decimal = ".", min, max, above, below } = options as Readonly<Record<string, unknown>>;
  const checks = new Checks().choice(decimal, [".", ","], ["decimal"]);
  for (const [name, bound] of Object.entries({ min, max, above, below })) {
    if (bound === undefined) continue;
    if (kind === "number") checks.number(bound, [name]);
    else checks.quantity(bound, kind, [name]);
  }
  checks.done();
}

/** A reading that failed. */
export function refused(
  code: ProblemCode,
  text: unknown,
  options: { readonly path?: Path },
  allowed: string,
  remedy: string,
): { readonly ok: false; readonly problem: Problem } {
  const received = receivedText(text ?? undefined);
  return { ok: false, problem: { code, path: options.path ?? [], allowed, received, remedy } };
}

/** A reading that succeeded. */
export function understood<T>(value: T): Reading<T> {
  return { ok: true, value };
}
