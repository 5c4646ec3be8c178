import { type ProblemCode, ProblemError, requireRecord } from "../check/index.ts";
import { decimalsFor, type NumberStyle, tidy, trimmedText } from "./decimal.ts";
import { sameDimension } from "./dimensions.ts";
import { dimensionInWords, type Kind, kindOfDimension, withArticle } from "./kinds.ts";
import { feetInchesText, inSixteenths } from "./print-length.ts";
import { amountText, moneyText, priceDecimals } from "./print-money.ts";
import type { PrintedParts, PrintOptions, UnitSystem } from "./print-options.ts";
import { isQuantity, type Quantity } from "./quantity.ts";
import { rawText } from "./raw-text.ts";
import { siSymbol } from "./si-symbol.ts";
import { type UnitChoice, unitChoices } from "./unit-choices.ts";
import { unitOfText } from "./unit-text.ts";
import { cubicYard, foot, pound, squareFoot } from "./units.ts";

type Parts = Omit<PrintedParts, "second">;

function numberStyle(options: PrintOptions): NumberStyle {
  const { decimal = ".", grouped = true, style = "plain" } = options;
  return { decimal, grouped, typographic: style === "typographic" };
}

function together(number: string, unit: string, options: PrintOptions): Parts {
  const shown = number === "1" && /^(days|years)$/.test(unit) ? unit.slice(0, -1) : unit;
  // A figure does not break from its unit on the page.
  const gap = options.style === "typographic" ? "\u00a0" : " ";
  return { text: shown === "" ? number : number + gap + shown, number, unit: shown };
}

function decimalsIn(choice: UnitChoice, size: number, digits: number): number {
  return Math.max(decimalsFor(size, digits), choice.decimals ?? 0);
}

/**
 * The largest unit that the size reaches as it will be printed, and the size to print: 15.98 oz
 * would be printed as 16 oz, which is 1 lb.
 */
function chosenUnit(
  si: number,
  choices: readonly UnitChoice[],
  digits: number,
): [number, UnitChoice] {
  const home = choices.find((choice) => choice.home === true);
  if (si === 0 && home !== undefined) return [si, home];
  const reaches = (sizeSi: number) => choices.find(({ fromSi }) => sizeSi * (1 + 1e-12) >= fromSi);
  const reached = reaches(Math.abs(si));
  const small = reached ?? (choices[choices.length - 1] as UnitChoice);
  const size = Math.abs(si) / small.unitSi;
  const printedSi = Number(size.toFixed(decimalsIn(small, size, digits))) * small.unitSi;
  const large = reaches(printedSi) ?? small;
  return large === small ? [si, small] : [Math.sign(si) * printedSi, large];
}

function inUnit(si: number, choice: UnitChoice, options: PrintOptions): Parts {
  const value = tidy(si / choice.unitSi);
  const decimals = decimalsIn(choice, value, options.digits ?? 3);
  return together(trimmedText(value, decimals, numberStyle(options)), choice.symbol, options);
}

const perUnits: Readonly<
  Partial<Record<Kind, Readonly<Record<UnitSystem, readonly [string, number]>>>>
> = {
  "price per length": { us: ["ft", foot.si], metric: ["m", 1] },
  "price per area": { us: ["sq ft", squareFoot.si], metric: ["m²", 1] },
  "price per volume": { us: ["cu yd", cubicYard.si], metric: ["m³", 1] },
  "price per mass": { us: ["lb", pound.si], metric: ["kg", 1] },
};

function priceParts(q: Quantity, unit: string, unitSi: number, options: PrintOptions): Parts {
  const amount = tidy(q.si * unitSi);
  const number = amountText(
    amount,
    q.currency,
    priceDecimals(amount, q.currency),
    numberStyle(options),
  );
  return together(number, `/ ${unit}`, options);
}

function inGivenUnit(q: Quantity, symbol: string, options: PrintOptions): Parts {
  const priced = /^\s*(?:\/|per\b)\s*(.*)$/.exec(symbol)?.[1];
  const unit = unitOfText(priced === undefined ? symbol : `1/${priced}`);
  const fits =
    unit !== undefined && sameDimension(unit.dim, priced === undefined ? q.dim : withoutMoney(q));
  if (!fits) {
    const name = dimensionInWords(q.dim);
    throw new ProblemError([
      {
        code: "wrong-unit",
        path: ["unit"],
        allowed: `a unit of ${name}`,
        received: symbol,
        remedy: `Name a unit that ${withArticle(name)} is measured in.`,
      },
    ]);
  }
  if (priced !== undefined) return priceParts(q, priced, 1 / unit.si, options);
  return inUnit(q.si, { symbol, unitSi: unit.si, fromSi: 0 }, options);
}

function withoutMoney(q: Quantity): Quantity["dim"] {
  const [length, mass, time, , temperature] = q.dim;
  return q.dim[3] === 1 ? [length, mass, time, 0, temperature] : q.dim;
}

function refuse(code: ProblemCode, name: string, received: unknown, allowed: string): never {
  const problem = { code, path: [name], allowed, received: rawText(received ?? undefined) };
  throw new ProblemError([{ ...problem, remedy: `Give ${allowed}.` }]);
}

const choices = {
  system: ["us", "metric"],
  style: ["plain", "typographic"],
  decimal: [".", ","],
  liquid: [true, false],
  grouped: [true, false],
} as const;

/** Refuses options that nothing can be printed by. */
export function requirePrintOptions(options: PrintOptions): void {
  requireRecord(options, ["options"]);
  for (const [name, allowed] of Object.entries(choices)) {
    const value: unknown = options[name as keyof typeof choices];
    if (value === undefined || (allowed as readonly unknown[]).includes(value)) continue;
    refuse(value === null ? "missing" : "unknown", name, value, allowed.join(" or "));
  }
  const { unit, digits = 3 } = options;
  if (unit !== undefined && typeof unit !== "string") {
    refuse("unreadable", "unit", unit, "a unit by its symbol, as in or cu ft");
  }
  if (isQuantity(digits)) refuse("wrong-unit", "digits", digits, "a whole number of digits");
  if (digits === null) refuse("missing", "digits", digits, "1 to 15 digits");
  if (!Number.isInteger(digits)) refuse("unreadable", "digits", digits, "a whole number of digits");
  if (digits < 1) refuse("too-small", "digits", digits, "1 to 15 digits");
  if (digits > 15) refuse("too-large", "digits", digits, "1 to 15 digits");
}

/** Refuses what cannot be printed, so that no page ever says NaN. */
export function requirePrintable(q: unknown, options: PrintOptions): void {
  if (q === undefined || q === null) refuse("missing", "quantity", "", "a quantity");
  if (typeof q === "number" && Number.isFinite(q)) {
    refuse("wrong-unit", "quantity", q, "a quantity, as times(3, foot)");
  }
  if (!isQuantity(q)) refuse("unreadable", "quantity", q, "a quantity");
  if (!Number.isFinite(q.si)) refuse("unreadable", "quantity", q.si, "a finite quantity");
  requirePrintOptions(options);
}

/** A quantity in one system, in parts. */
function partsIn(q: Quantity, system: UnitSystem, options: PrintOptions): Parts {
  if (options.unit !== undefined) return inGivenUnit(q, options.unit, options);
  const kind = kindOfDimension(q.dim);
  if (kind === "money")
    return together(moneyText(q.si, q.currency, numberStyle(options)), "", options);
  if (kind === "length" && system === "us" && options.digits === undefined && inSixteenths(q.si)) {
    return together(feetInchesText(q.si, options.style === "typographic"), "", options);
  }
  const per = kind === undefined ? undefined : perUnits[kind];
  if (per !== undefined) return priceParts(q, per[system][0], per[system][1], options);
  const choices =
    kind === undefined ? undefined : unitChoices(kind, system, options.liquid ?? false);
  if (choices === undefined) {
    return inUnit(q.si, { symbol: siSymbol(q), unitSi: 1, fromSi: 0 }, options);
  }
  const [size, choice] = chosenUnit(q.si, choices, options.digits ?? 3);
  return inUnit(size, choice, options);
}

/**
 * A quantity printed in parts, for a column of figures: the figure, the unit, and the same in the
 * other system. Options as for `printQuantity`.
 *
 * @throws ProblemError for what is no finite quantity (`missing`, `wrong-unit`, `unreadable`), for
 * a `unit` that does not measure it (`wrong-unit`), for `digits` outside 1 to 15
 * @rule the figure is rounded half away from zero to the digits asked for
 * @source common practice
 * @example
 * printParts(times(2, cubicYard)).unit // => "cu yd"
 */
export function printParts(q: Quantity, options: PrintOptions = {}): PrintedParts {
  requirePrintable(q, options);
  const system = options.system ?? "us";
  const parts = partsIn(q, system, options);
  const { unit: _given, ...free } = options;
  const other = partsIn(q, system === "us" ? "metric" : "us", free).text;
  return other === parts.text ? parts : { ...parts, second: other };
}

/**
 * A quantity as people read it. US lengths under 100 ft come in feet, inches and sixteenths
 * ("8 ft 3 1/2 in") unless a sixteenth is too coarse or `digits` is given; everything else in
 * decimals, three significant digits, whole digits never dropped; money to its minor unit.
 *
 * @throws ProblemError for what is no finite quantity (`missing`, `wrong-unit`, `unreadable`), for
 * a `unit` that does not measure it (`wrong-unit`), for `digits` outside 1 to 15
 * @rule the figure is rounded half away from zero to the digits asked for
 * @source common practice
 * @example
 * printQuantity(times(99.5, inch)) // => "8 ft 3 1/2 in"
 * printQuantity(times(2, cubicFoot), { system: "metric" }) // => "56.6 L"
 */
export function printQuantity(q: Quantity, options: PrintOptions = {}): string {
  requirePrintable(q, options);
  return partsIn(q, options.system ?? "us", options).text;
}
