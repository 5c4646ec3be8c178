import { ProblemError, readUnit } from "../../lib/index.ts";
import type { Entry, EntryReading } from "../engine/types/index.ts";

/** What every entry may say of itself. */
export interface EntryOptions {
  /** A sentence for the reader, as which range is usual. */
  readonly hint?: string;
  /** Where the default comes from: source ids, `common practice`, `from memory`. */
  readonly sources?: readonly string[];
}

/** What an entry of a quantity or number may say of itself. */
export interface BoundedOptions<Q> extends EntryOptions {
  /** The least allowed, as text ("1/16 in") or as a value. */
  readonly min?: string | Q;
  /** The greatest allowed. */
  readonly max?: string | Q;
}

/** Lets `none` be written, which gives null. */
export interface NoneOption {
  readonly orNone?: boolean;
}

/** The type of an entry's value: null too, where `none` may be written. */
export type OrNone<T, O> = O extends { readonly orNone: true } ? T | null : T;

const shared = ["hint", "sources"] as const;

/** Refuses a misspelt option: it would be without effect and nobody would know. */
export function refuseUnknownKeys(options: object, known: readonly string[]): void {
  const allowed: readonly string[] = [...known, ...shared];
  const unknown = Object.keys(options).filter((key) => !allowed.includes(key));
  if (unknown.length === 0) return;
  throw new ProblemError(
    unknown.map((key) => ({
      code: "unknown",
      path: ["options", key],
      allowed: `one of ${[...allowed].sort().join(", ")}`,
      received: key,
      remedy: "Mend the option's name, or leave it out.",
    })),
  );
}

/**
 * The entry itself. Its default is read like anything typed.
 *
 * @throws ProblemError where the default cannot be read
 */
export function madeEntry<T, O extends EntryOptions & NoneOption>(
  parts: Omit<Entry<T>, "hint" | "sources">,
  options: O,
): Entry<OrNone<T, O>> {
  const { hint, sources, orNone = false } = options;
  const read = (text: string): EntryReading<T | null> =>
    orNone && /^\s*none\s*$/i.test(text) ? { ok: true, value: null } : parts.read(text);
  const first = read(parts.initial);
  if (!first.ok) {
    const problem = { ...first.problem, path: ["default"] };
    throw new ProblemError([problem as ConstructorParameters<typeof ProblemError>[0][number]]);
  }
  const limits = orNone ? [parts.limits, "or none"].filter(Boolean).join(", ") : parts.limits;
  return Object.freeze({
    ...parts,
    read: read as (text: string) => EntryReading<OrNone<T, O>>,
    ...(limits === undefined ? {} : { limits }),
    ...(hint === undefined ? {} : { hint }),
    ...(sources === undefined ? {} : { sources: Object.freeze([...sources]) }),
  });
}

/** The unit a text ends with: "8 ft 3 1/2 in" gives "in"; undefined where it has none. */
export function unitIn(text: string): string | undefined {
  const [, unit] = /\d\s*([^\d\s.,/][^\d]*?(?:[23²³])?)\s*$/.exec(text) ?? [];
  return unit !== undefined && readUnit(unit).ok ? unit : undefined;
}

/** A bare number with the unit it takes; undefined for any other text. */
export function completed(text: string, unit: string | undefined): string | undefined {
  const bare = /^\s*[-+]?\d[\d\s.,/]*$/.test(text);
  return bare && unit !== undefined ? `${text.trim()} ${unit}` : undefined;
}

/** Limits in words: "1/16 in to 6 in", "at least 0". */
export function limitsInWords(
  min: string | undefined,
  max: string | undefined,
): string | undefined {
  if (min !== undefined && max !== undefined) return `${min} to ${max}`;
  if (min !== undefined) return `at least ${min}`;
  return max === undefined ? undefined : `at most ${max}`;
}
