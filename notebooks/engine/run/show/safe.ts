// Values come from cells, which may be anybody's: a property may throw, lie or have no end.

/** A property, or undefined where asking for it throws. */
export function property(value: object, key: PropertyKey): unknown {
  try {
    return (value as Record<PropertyKey, unknown>)[key];
  } catch {
    return undefined;
  }
}

/** The names of a record's own properties, at most `limit`. */
export function ownKeys(value: object, limit: number): readonly string[] {
  try {
    return Object.keys(value).slice(0, limit);
  } catch {
    return [];
  }
}

/** What `attempt` gives, or `otherwise` where it throws. */
export function tried<T>(attempt: () => T, otherwise: T): T {
  try {
    return attempt();
  } catch {
    return otherwise;
  }
}

export function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}

/** As `Array.isArray`, which throws at a revoked proxy. */
export function isList(value: unknown): value is readonly unknown[] {
  return tried(() => Array.isArray(value), false);
}

/** As `instanceof`, which a proxy may make throw. */
export function isA<T>(value: unknown, kind: new (...values: never[]) => T): value is T {
  return tried(() => value instanceof kind, false);
}

/** The items of an array, at most `limit`, read one by one so that holes and lies do no harm. */
export function itemsOf(value: readonly unknown[], limit: number): readonly unknown[] {
  const length = tried(() => value.length, 0);
  const items: unknown[] = [];
  for (let index = 0; index < Math.min(length, limit); index += 1) {
    items.push(property(value, index));
  }
  return items;
}

/** Text cut to a length, with a mark where something was left off. */
export function capped(text: string, limit: number): string {
  return text.length <= limit ? text : `${text.slice(0, limit - 1)}…`;
}

/** Words for what has no better text: the message of an error, the text of a value. */
export function plainText(value: unknown): string {
  if (typeof value === "function") return "a function";
  if (isA(value, Error)) return tried(() => String(value.message), "an error");
  return tried(() => String(value), "a value that cannot be shown");
}
