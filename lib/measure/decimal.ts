/**
 * Takes away what binary arithmetic adds after the fifteenth digit, so that three feet taken in
 * feet are 3 and not 3.0000000000000004.
 */
export function tidy(value: number): number {
  return Number.isInteger(value) ? value : Number(value.toPrecision(15));
}

/** Rounds to so many decimals, a half away from zero, judged on the decimal digits people see. */
export function roundHalfAway(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  const scaled = tidy(Math.abs(value) * scale);
  if (scaled >= 2 ** 52) return value;
  const rounded = Math.floor(scaled + 0.5);
  return rounded === 0 ? 0 : (Math.sign(value) * rounded) / scale;
}

/** How numbers are written. */
export interface NumberStyle {
  /** Mark before the decimals; `.` unless given. */
  readonly decimal?: "." | ",";
  /** Whether thousands are set apart ("1,250"; with a decimal comma "1 250"); true unless given. */
  readonly grouped?: boolean;
  /** Minus as U+2212, for the page; a hyphen otherwise. */
  readonly typographic?: boolean;
}

function grouped(whole: string, separator: string): string {
  return whole.replace(/\B(?=(\d{3})+(?!\d))/g, separator);
}

/** A number with exactly so many decimals, never "-0". */
export function fixedText(value: number, decimals: number, style: NumberStyle = {}): string {
  const { decimal = ".", grouped: groups = true, typographic = false } = style;
  const rounded = roundHalfAway(value, decimals);
  const size = Math.abs(rounded);
  const sign = rounded < 0 ? (typographic ? "−" : "-") : "";
  if (size >= 1e21) return sign + size.toPrecision(15).replace(".", decimal);
  const [whole = "0", part = ""] = size.toFixed(decimals).split(".");
  const separator = decimal === "." ? "," : " ";
  const written = groups ? grouped(whole, separator) : whole;
  return sign + written + (part === "" ? "" : decimal + part);
}

/** Decimals that leave so many significant digits; whole digits are never dropped. */
export function decimalsFor(value: number, digits: number): number {
  if (value === 0 || !Number.isFinite(value)) return 0;
  const place = Math.floor(Math.log10(Math.abs(value)));
  return Math.min(15, Math.max(0, digits - 1 - place));
}

/** A number to so many significant digits, without trailing zeros. */
export function significantText(value: number, digits: number, style: NumberStyle = {}): string {
  return trimmedText(value, decimalsFor(value, digits), style);
}

/** A number to at most so many decimals, without trailing zeros. */
export function trimmedText(value: number, decimals: number, style: NumberStyle = {}): string {
  const text = fixedText(value, decimals, style);
  const mark = style.decimal ?? ".";
  if (decimals === 0 || !text.includes(mark)) return text;
  return text.replace(/0+$/, "").replace(/[.,]$/, "");
}
