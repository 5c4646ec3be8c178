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
