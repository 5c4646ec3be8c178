import { minorDigits, signOf } from "./currency.ts";
import { decimalsFor, fixedText, type NumberStyle, trimmedText } from "./decimal.ts";

/** An amount with its currency's sign or code: "$1,516.44", "CHF 12.00", "12.00" without one. */
export function amountText(
  amount: number,
  currency: string | undefined,
  decimals: number,
  style: NumberStyle,
): string {
  const number = fixedText(Math.abs(amount), decimals, style);
  const isZero = /^[0.,\s]*$/.test(number);
  const sign = amount < 0 && !isZero ? (style.typographic ? "−" : "-") : "";
  if (currency === undefined) return sign + number;
  const mark = signOf(currency);
  return mark === undefined ? `${sign}${currency} ${number}` : `${sign}${mark}${number}`;
}

/** Money to its minor unit. */
export function moneyText(
  amount: number,
  currency: string | undefined,
  style: NumberStyle,
): string {
  return amountText(amount, currency, minorDigits(currency), style);
}

/** Decimals of a price per unit: those of the currency, more where it is a fraction of a cent. */
export function priceDecimals(amount: number, currency: string | undefined): number {
  const least = minorDigits(currency);
  const most = Math.max(least, decimalsFor(amount, 3));
  const needed = trimmedText(amount, most, { grouped: false }).split(".")[1] ?? "";
  return Math.max(least, needed.length);
}
