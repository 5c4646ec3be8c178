import { plainText, unsignedNumber } from "./number-in-text.ts";

/** A number and the unit written after it; the unit is empty for a bare number. */
export interface MeasuredPart {
  readonly value: number;
  readonly symbol: string;
}

export type PartsFound =
  | { readonly negative: boolean; readonly parts: readonly MeasuredPart[] }
  | { readonly trouble: string };

// A number is digits with points, commas and grouping spaces, perhaps with a fraction; what follows
// up to the next number is its unit. An exponent belongs to the unit where nothing but its end follows.
const numberPattern =
  /^(?:\d+[ -]\d+ ?\/ ?\d+|\d+ ?\/ ?\d+|\d{1,3}(?: \d{3})+(?:,\d+)?(?![\d.,])|(?:\d|[.,]\d)[\d.,]*(?:e[+-]?\d+)?)/i;
const raisedUnit = /^ ?[^\d\s][^\d]*?\^?[23](?![\d.,/])(?: ?(?:\/|per ).*)?$/;
const plainUnit = /^ ?[^\d]*/;

function unitAfter(text: string, raised: boolean): string {
  const whole = raised ? raisedUnit.exec(text)?.[0] : undefined;
  if (whole !== undefined) return whole;
  // Below a stroke anything goes: "640 kg/m3".
  const ratio = /^ ?[^\d]*?(?:\/| per ).*$/.exec(text)?.[0];
  return ratio ?? plainUnit.exec(text)?.[0] ?? "";
}

/** Splits "5 lb 4 oz" into its parts. `raised`: units may end in an exponent, as "yd3". */
export function measuredParts(text: string, decimal: "." | ",", raised: boolean): PartsFound {
  const plain = plainText(text);
  const negative = plain.startsWith("-");
  let rest = plain.replace(/^[-+] ?/, "");
  const parts: MeasuredPart[] = [];
  while (rest !== "") {
    const number = numberPattern.exec(rest)?.[0];
    if (number === undefined) return { trouble: "it does not begin with a number" };
    const found = unsignedNumber(number.trim(), decimal);
    if ("trouble" in found) return found;
    const symbol = unitAfter(rest.slice(number.length), raised);
    parts.push({ value: found.value, symbol: symbol.trim() });
    rest = rest.slice(number.length + symbol.length).trim();
  }
  return parts.length === 0 ? { trouble: "it is empty" } : { negative, parts };
}
