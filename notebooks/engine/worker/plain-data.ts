/**
 * A copy of a value holding only what survives being sent: functions are left out, maps and sets
 * stay. Records keep their own fields in order.
 */
export function plainData(value: unknown): unknown {
  if (typeof value === "function" || typeof value === "symbol") return undefined;
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(plainData);
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) return value;
  const copy: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(value))
    if (typeof field !== "function") copy[key] = plainData(field);
  return copy;
}

/** What is no plain data, and where it stands. */
export interface Odd {
  readonly what: string;
  /** As `[0].pieces[2].price`. */
  readonly path: string;
}

/** The first part of a value that could not be sent to another thread; undefined where all of it can. */
export function notPlain(value: unknown): Odd | undefined {
  const seen = new Set<object>();
  const waiting: { readonly part: unknown; readonly path: string }[] = [{ part: value, path: "" }];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    const { part, path } = at;
    const what = oddity(part);
    if (what !== undefined) return { what, path };
    if (typeof part !== "object" || part === null || seen.has(part)) continue;
    seen.add(part);
    for (const [name, field] of partsOf(part).reverse())
      waiting.push({ part: field, path: `${path}${name}` });
  }
  return undefined;
}

function oddity(value: unknown): string | undefined {
  if (typeof value === "function") return "a function";
  if (typeof value === "symbol") return "a symbol";
  if (value instanceof Promise) return "a promise";
  return value instanceof WeakMap || value instanceof WeakSet ? "a weak collection" : undefined;
}

function partsOf(value: object): (readonly [name: string, part: unknown])[] {
  if (value instanceof Map)
    return [...value].flatMap(([key, part]) => [
      [" (a key)", key] as const,
      [`(${key})`, part] as const,
    ]);
  if (value instanceof Set) return [...value].map((part) => ["(a member)", part]);
  const dotted = !Array.isArray(value);
  return Object.entries(value).map(([name, part]) => [dotted ? `.${name}` : `[${name}]`, part]);
}
