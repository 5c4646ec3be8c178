import type { ProblemCode } from "../../../lib/index.ts";

/** What a bad value must lead to: a problem of this kind, or none because it is allowed. */
export type Outcome = ProblemCode | "fine";

/** A bad value of one part of an input. */
export interface Variant {
  readonly what: string;
  readonly value: unknown;
  readonly outcomes: readonly Outcome[];
}

/** A part of a good call: a single value, a record or a list, with what is bad in its place. */
export interface Part {
  /** Made by another function, as it makes it: fields that it left out are not asked for. */
  readonly asMade?: true;
  readonly good: unknown;
  readonly variants: readonly Variant[];
  /** Parts inside, each with the whole value rebuilt around another one. */
  readonly inner: readonly {
    readonly key: string | number;
    readonly part: Part;
    readonly around: (value: unknown) => unknown;
  }[];
}

/** A bad value with where it stands in the arguments, and the whole argument around it. */
export interface BadArgument extends Variant {
  readonly place: readonly (string | number)[];
  readonly argument: unknown;
}

/** Every bad form of an argument: of the whole, and of each part of it, however deep. */
export function badForms(part: Part, place: readonly (string | number)[]): BadArgument[] {
  const own = part.variants.map((variant) => ({ ...variant, place, argument: variant.value }));
  const within = part.inner.flatMap(({ key, part: inside, around }) =>
    badForms(inside, [...place, key]).map((bad) => ({ ...bad, argument: around(bad.argument) })),
  );
  return [...own, ...within];
}

/** Whether a part may be left out. */
export interface PartOptions {
  readonly optional?: boolean;
}

/** A value without parts. */
export function leaf(good: unknown, variants: readonly Variant[]): Part {
  return { good, variants, inner: [] };
}

export function variant(what: string, value: unknown, ...outcomes: Outcome[]): Variant {
  return { what, value, outcomes };
}

/** Nothing in the place of a value. `null` for something optional may count as nothing, or not. */
export function nothing({ optional = false }: PartOptions): Variant[] {
  return optional
    ? [
        variant("nothing", undefined, "fine"),
        variant("null", null, "fine", "missing", "unreadable", "unknown"),
      ]
    : [variant("nothing", undefined, "missing"), variant("null", null, "missing")];
}

/** A record; in its place text, numbers and lists are refused. */
export function record(fields: Readonly<Record<string, Part>>, options: PartOptions = {}): Part {
  const good = Object.fromEntries(Object.entries(fields).map(([key, part]) => [key, part.good]));
  return {
    good,
    variants: [
      ...nothing(options),
      variant("text for a record", "4x8", "unreadable"),
      variant("a number for a record", 12, "unreadable"),
      variant("a list for a record", [1], "unreadable"),
    ],
    inner: Object.entries(fields).map(([key, part]) => ({
      key,
      part,
      around: (value) => ({ ...good, [key]: value }),
    })),
  };
}

/** A list of at least one part; whether it may be empty is said. */
export function list(parts: readonly Part[], options: PartOptions & { empty: Outcome }): Part {
  const good = parts.map((part) => part.good);
  return {
    good,
    variants: [
      ...nothing(options),
      variant("an empty list", [], options.empty),
      variant("text for a list", "4x8", "unreadable", "missing"),
      variant("a number for a list", 12, "unreadable", "missing"),
      variant("a record for a list", { length: 1 }, "unreadable", "missing"),
    ],
    inner: parts.map((part, at) => ({
      key: at + 1,
      part,
      around: (value) => good.with(at, value),
    })),
  };
}

/** The same part with other bad values: those named by `what` are replaced, others added. */
export function but(part: Part, ...changed: readonly Variant[]): Part {
  const names = new Set(changed.map(({ what }) => what));
  const kept = part.variants.filter(({ what }) => !names.has(what));
  return { ...part, variants: [...kept, ...changed] };
}
