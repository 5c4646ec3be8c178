import { ProblemError, readUnit, requireRecord, requireText } from "../../lib/index.ts";
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

/**
 * Refuses options that would be without effect with nobody knowing: what is no record, a misspelt
 * name, a hint or a source that is no text.
 */
export function requireOptions(options: EntryOptions, known: readonly string[]): void {
  requireRecord(options, ["options"]);
  const { hint, sources } = options;
  if (hint !== undefined) requireText(hint, ["options", "hint"]);
  if (sources !== undefined) requireTexts(sources, ["options", "sources"]);
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

/** Refuses what is no list of texts. */
export function requireTexts(value: unknown, path: readonly string[]): void {
  if (!Array.isArray(value)) {
    const received = typeof value === "object" ? "a record" : String(value);
    const problem = { code: "unreadable", path, allowed: "a list of texts", received } as const;
    throw new ProblemError([{ ...problem, remedy: 'Give a list, as ["a", "b"].' }]);
  }
  for (const [index, text] of value.entries()) requireText(text, [...path, index + 1]);
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
  // A blank default is for the reader of the kind to judge.
  if (typeof parts.initial !== "string") requireText(parts.initial, ["default"]);
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
