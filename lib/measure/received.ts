import { dimensionInWords, withArticle } from "./kinds.ts";
import { printQuantity } from "./print-quantity.ts";
import { isQuantity } from "./quantity.ts";

/** What was received, as raw as a sentence can carry it; empty for nothing. */
export function receivedText(value: unknown): string {
  if (value === undefined) return "";
  if (typeof value === "string") return value;
  if (isQuantity(value)) return Number.isFinite(value.si) ? printQuantity(value) : String(value.si);
  if (typeof value === "function") return "a function";
  if (typeof value !== "object" || value === null) return String(value);
  const text = Array.isArray(value) ? `a list of ${value.length}` : recordText(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

function recordText(value: object): string {
  const keys = Object.keys(value);
  return keys.length === 0 ? "an empty record" : `a record of ${keys.join(", ")}`;
}

/** A value with what it is: "a length (4 ft)", "a number (4)", "nothing". */
export function described(value: unknown): string {
  if (value === undefined || value === null) return `nothing (${value})`;
  if (isQuantity(value))
    return `${withArticle(dimensionInWords(value.dim))} (${receivedText(value)})`;
  if (typeof value === "number") return `a number (${value})`;
  if (typeof value === "string") return `text (“${value}”)`;
  if (typeof value === "boolean") return value ? "a yes (true)" : "a no (false)";
  return receivedText(value);
}
