/**
 * Checks of data that came from the closed room, where anybody's code runs. Each says whether a
 * value has the shape; together they spend from one budget, so that a small message cannot hide
 * a huge one.
 */
export type Check = (value: unknown, budget: Budget) => boolean;

export class Budget {
  private parts: number;
  private characters: number;

  constructor({ parts, characters }: { parts: number; characters: number }) {
    this.parts = parts;
    this.characters = characters;
  }

  part(): boolean {
    this.parts -= 1;
    return this.parts >= 0;
  }

  text(length: number): boolean {
    this.characters -= length;
    return this.characters >= 0;
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
  (value, budget) =>
    Array.isArray(value) &&
    value.length <= most &&
    budget.part() &&
    value.every((one) => item(one, budget));

/** A plain record with these fields; fields in `may` can be absent. Others are ignored. */
export const record =
  (must: Readonly<Record<string, Check>>, may: Readonly<Record<string, Check>> = {}): Check =>
  (value, budget) => {
    if (!isPlain(value) || !budget.part()) return false;
    const has = (name: string) => Object.hasOwn(value, name) && value[name] !== undefined;
    return (
      Object.entries(must).every(([name, check]) => has(name) && check(value[name], budget)) &&
      Object.entries(may).every(([name, check]) => !has(name) || check(value[name], budget))
    );
  };

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
    return kinds[kind]?.(value, budget) ?? false;
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
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
