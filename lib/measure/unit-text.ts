import { currencySigns, isCurrencyCode } from "./currency.ts";
import type { Dimension } from "./dimension.ts";
import { moneyDimension, productDimension, sameDimension } from "./dimensions.ts";
import { type Quantity, quantity } from "./quantity.ts";
import { unitOfSymbol } from "./symbols.ts";

// The grammar of a unit: factors side by side, one stroke or "per", factors below. A factor is a
// known symbol, a symbol with an exponent, a number, or a group in brackets.
const exponents: Readonly<Record<string, number>> = {
  "²": 2,
  "³": 3,
  "2": 2,
  "3": 3,
  "^2": 2,
  "^3": 3,
};

interface Factor {
  readonly si: number;
  readonly dim: Dimension;
  readonly currency?: string;
}

const one: Factor = { si: 1, dim: [0, 0, 0, 0, 0] };

function multiplied(a: Factor, b: Factor, sign: 1 | -1): Factor | undefined {
  const dim = productDimension(a.dim, b.dim, sign);
  if (dim === undefined) return undefined;
  const currency = a.currency ?? b.currency;
  const si = sign === 1 ? a.si * b.si : a.si / b.si;
  return currency === undefined ? { si, dim } : { si, dim, currency };
}

function simpleFactor(text: string): Factor | undefined {
  const unit = unitOfSymbol(text);
  if (unit !== undefined) return unit;
  const sign = Object.hasOwn(currencySigns, text) ? currencySigns[text] : undefined;
  const code = sign ?? (isCurrencyCode(text) ? text : undefined);
  if (code !== undefined) return { si: 1, dim: moneyDimension, currency: code };
  if (/^\d{1,9}(\.\d{1,9})?$/.test(text) && Number(text) > 0) return { ...one, si: Number(text) };
  const [, symbol, mark = ""] = /^(.*?[^\d^²³\s])(\^?[23]|[²³])$/.exec(text) ?? [];
  const base = symbol === undefined ? undefined : unitOfSymbol(symbol);
  if (base === undefined) return undefined;
  const square = multiplied(base, base, 1);
  if (square === undefined || exponents[mark] === 2) return square;
  return multiplied(square, base, 1);
}

function product(text: string): Factor | undefined {
  const bare = text.trim().replace(/^\((.*)\)$/, "$1");
  const whole = simpleFactor(bare.trim());
  if (whole !== undefined) return whole;
  const parts = bare.split(/[·*×]|(?<=\d)\s+(?=[a-z])/i);
  if (parts.length < 2) return undefined;
  let all: Factor | undefined = one;
  for (const part of parts) {
    const factor = simpleFactor(part.trim());
    all = factor === undefined || all === undefined ? undefined : multiplied(all, factor, 1);
  }
  return all;
}

/** The unit a text names, or undefined. A plain number's dimension is none. */
export function unitOfText(text: string): Quantity | undefined {
  const parts = text
    .trim()
    .replace(/\s+per\s+/gi, "/")
    .split("/");
  let all = product(parts[0] === "" ? "1" : (parts[0] ?? ""));
  for (const below of parts.slice(1)) {
    const factor = product(below);
    all = all === undefined || factor === undefined ? undefined : multiplied(all, factor, -1);
  }
  if (all === undefined) return undefined;
  return quantity(all.si, all.dim, all.currency) as Quantity;
}

/** Whether a unit measures a dimension. */
export function measures(unit: Quantity, dim: Dimension): boolean {
  return sameDimension(unit.dim, dim);
}
