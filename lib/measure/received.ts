import { dimensionInWords, withArticle } from "./kinds.ts";
import { printQuantity } from "./print-quantity.ts";
import { isQuantity } from "./quantity.ts";
import { rawText } from "./raw-text.ts";

/** What was received, as raw as a sentence can carry it; empty for nothing. */
export function receivedText(value: unknown): string {
  if (isQuantity(value)) return Number.isFinite(value.si) ? printQuantity(value) : String(value.si);
  return rawText(value);
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
