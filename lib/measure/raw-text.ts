/**
 * A value as raw as a sentence can carry it, quantities not printed; empty for nothing. What
 * prints quantities builds on files that refuse values with this, so it stands apart.
 */
export function rawText(value: unknown): string {
  if (value === undefined) return "";
  if (typeof value === "string") return value;
  if (typeof value === "function") return "a function";
  if (typeof value !== "object" || value === null) return String(value);
  const text = Array.isArray(value) ? `a list of ${value.length}` : recordText(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

function recordText(value: object): string {
  const keys = Object.keys(value);
  return keys.length === 0 ? "an empty record" : `a record of ${keys.join(", ")}`;
}
