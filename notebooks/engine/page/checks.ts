/**
 * Checks of data that came from the closed room, where anybody's code runs. Each says whether a
 * value has the shape; together they spend from one budget, so that a small message cannot hide
 * a huge one.
 */
export type Check = (value: unknown, budget: Budget) => boolean;

export interface Amount {
  readonly parts: number;
  readonly characters: number;
}

export class Budget {
  readonly #most: Amount;
  #parts = 0;
  #characters = 0;
  /** The first field met that is on no list. */
  unknown: string | undefined;

  constructor(most: Amount) {
    this.#most = most;
  }

  get spent(): Amount {
    return { parts: this.#parts, characters: this.#characters };
  }

  part(): boolean {
    this.#parts += 1;
    return this.#parts <= this.#most.parts;
  }

  text(length: number): boolean {
    this.#characters += length;
    return this.#characters <= this.#most.characters;
  }
}

/** A text of at most so many characters. */
export const text =
  (most = 2_000): Check =>
  (value, budget) =>
    typeof value === "string" && value.length <= most && budget.part() && budget.text(value.length);

export const finite: Check = (value, budget) =>
  typeof value === "number" && Number.isFinite(value) && budget.part();

export const yesNo: Check = (value, budget) => typeof value === "boolean" && budget.part();

/** One of a few words. */
export const word =
  (...words: readonly unknown[]): Check =>
  (value, budget) =>
    words.includes(value) && budget.part();

export const list =
  (item: Check, most = 100_000): Check =>
  (value, budget) => {
    if (!Array.isArray(value) || value.length > most || !budget.part()) return false;
    // Counted, not `every`, which would pass over holes.
    for (let index = 0; index < value.length; index += 1)
      if (!item(value[index], budget)) return false;
    return true;
  };

/**
 * A plain record with these fields; fields in `may` can be absent. One with any other is refused:
 * what nobody checked must not reach the page.
 */
export const record = (
  must: Readonly<Record<string, Check>>,
  may: Readonly<Record<string, Check>> = {},
): Check => {
  const checks = new Map(Object.entries({ ...may, ...must }));
  const needed = Object.keys(must);
  return (value, budget) => {
    if (!isPlain(value) || !budget.part()) return false;
    for (const name of Object.keys(value)) {
      const check = checks.get(name);
      if (!check) budget.unknown ??= name.slice(0, 60);
      if (!check || (value[name] !== undefined && !check(value[name], budget))) return false;
    }
    return needed.every((name) => Object.hasOwn(value, name) && value[name] !== undefined);
  };
};

/** A plain record whose fields `check` looks at later. */
export const recordWith =
  (must: Readonly<Record<string, Check>>): Check =>
  (value, budget) =>
    isPlain(value) &&
    budget.part() &&
    Object.entries(must).every(
      ([name, check]) => Object.hasOwn(value, name) && check(value[name], budget),
    );

/** A record of any names, all of one kind. */
export const recordOf =
  (item: Check, most = 2_000): Check =>
  (value, budget) => {
    if (!isPlain(value) || !budget.part()) return false;
    const fields = Object.entries(value);
    return (
      fields.length <= most &&
      fields.every(([name, field]) => text(200)(name, budget) && item(field, budget))
    );
  };

/** One of several kinds of record, told apart by one of their fields. */
export const byField =
  (field: string, kinds: Readonly<Record<string, Check>>): Check =>
  (value, budget) => {
    if (!isPlain(value)) return false;
    const kind = value[field];
    if (typeof kind !== "string" || !Object.hasOwn(kinds, kind)) return false;
    const { [field]: _, ...rest } = value;
    return kinds[kind]?.(rest, budget) ?? false;
  };

/** For shapes that hold themselves, no deeper than `most`. */
export function nested(most: number, make: (inner: Check) => Check): Check {
  const at = (depth: number): Check =>
    depth > most ? () => false : (value, budget) => make(at(depth + 1))(value, budget);
  return at(0);
}

export const anyOf =
  (...checks: readonly Check[]): Check =>
  (value, budget) =>
    checks.some((check) => check(value, budget));

function isPlain(value: unknown): value is Record<string, unknown> {
  return (
    typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype
  );
}
