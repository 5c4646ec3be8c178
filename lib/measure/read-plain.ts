import { type Path, type Reading, requireRecord } from "../check/index.ts";
import { allowedText, type Bounds, boundProblem } from "./bounds.ts";
import { tidy } from "./decimal.ts";
import { requireChoice } from "./guards.ts";
import { plainText, unsignedNumber } from "./number-in-text.ts";
import { type ReadOptions, refused, requireReadOptions, understood } from "./read-options.ts";

type NumberOptions = Omit<ReadOptions<number>, "unit">;

function blank(text: unknown): boolean {
  return text === undefined || text === null || (typeof text === "string" && text.trim() === "");
}

function within(
  value: number,
  noun: string,
  bounds: Bounds<number>,
  text: string,
  path: Path = [],
): Reading<number> {
  const problem = boundProblem(value, noun, bounds, { path, received: text });
  return problem === undefined ? understood(value) : { ok: false, problem };
}

function signedNumber(text: string, decimal: "." | ","): number | string {
  const plain = plainText(text);
  const found = unsignedNumber(plain.replace(/^[-+] ?/, ""), decimal);
  if ("trouble" in found) return found.trouble;
  return plain.startsWith("-") ? 0 - found.value : found.value;
}

/**
 * Reads a number without unit: "12", "1,250", "0.5", "3 1/2".
 *
 * @rule decimals after the mark given, thousands apart in threes
 * @source common practice
 * @example
 * readNumber("3 1/2") // => {"ok":true,"value":3.5}
 */
export function readNumber(text: string, options: NumberOptions = {}): Reading<number> {
  requireReadOptions(options, "number");
  const allowed = allowedText("a number", options);
  if (blank(text))
    return refused("missing", text, options, allowed, "Write a number, as 3 or 0.5.");
  const value =
    typeof text === "string" ? signedNumber(text, options.decimal ?? ".") : "it is not text";
  if (typeof value === "string") {
    const remedy = `It could not be read: ${value}. Write a number, as 3 or 0.5.`;
    return refused("unreadable", text, options, allowed, remedy);
  }
  return within(value, "a number", options, text, options.path);
}

/**
 * Reads a whole number, from 0 unless `min` says otherwise: "3", "1,250".
 *
 * @rule a number without a fraction
 * @source common practice
 * @example
 * readCount("12") // => {"ok":true,"value":12}
 */
export function readCount(text: string, options: NumberOptions = {}): Reading<number> {
  requireReadOptions(options, "number");
  const bounds = options.above === undefined ? { min: 0, ...options } : options;
  const allowed = allowedText("a whole number", bounds);
  const remedy = "Write a whole number, as 3.";
  if (blank(text)) return refused("missing", text, options, allowed, remedy);
  const value = typeof text === "string" ? signedNumber(text, options.decimal ?? ".") : "";
  if (typeof value === "string" || !Number.isInteger(value)) {
    return refused("unreadable", text, options, allowed, remedy);
  }
  return within(value, "a whole number", bounds, text, options.path);
}

/** How a share is read; bounds are shares, 0.12 for 12 %. */
export interface PercentOptions extends NumberOptions {
  /** `%` lets a bare number be a percentage; otherwise the sign must be written. */
  readonly unit?: "%";
}

/**
 * Reads a percentage as a share: "12 %" is 0.12. Without the sign it is refused, unless the
 * options say that a bare number is a percentage: 0.12 might mean either.
 *
 * @rule the number over 100
 * @source nist-sp-811
 * @example
 * readPercent("12 %") // => {"ok":true,"value":0.12}
 */
export function readPercent(text: string, options: PercentOptions = {}): Reading<number> {
  requireReadOptions(options, "number");
  const { path, decimal = ".", unit, ...bounds } = options;
  requireChoice(unit ?? "%", ["%"], ["unit"]);
  const allowed = percentAllowed(bounds);
  const remedy = "Write a percentage, as 12 %.";
  if (blank(text)) return refused("missing", text, options, allowed, remedy);
  if (typeof text !== "string") return refused("unreadable", text, options, allowed, remedy);
  const digits = text.trim().replace(/ *(?:%|percent|per cent)$/i, "");
  const value = signedNumber(digits, decimal);
  if (typeof value === "string") return refused("unreadable", text, options, allowed, remedy);
  if (digits === text.trim() && unit !== "%") {
    return refused("wrong-unit", text, options, allowed, `Add the sign: ${digits} %.`);
  }
  const checked = within(tidy(value / 100), "a percentage", bounds, text, path);
  if (checked.ok) return checked;
  const { code } = checked.problem;
  return refused(code, text, options, allowed, `Write ${allowed.replace("a percentage", "one")}.`);
}

function percentAllowed(bounds: Bounds<number>): string {
  const inPercent = Object.fromEntries(
    Object.entries(bounds)
      .filter(([, bound]) => bound !== undefined)
      .map(([name, bound]) => [name, tidy(bound * 100)]),
  );
  return allowedText("a percentage", inPercent).replace(/(\d)(?= |$)/g, "$1 %");
}

const answers: Readonly<Record<string, boolean>> = {
  yes: true,
  y: true,
  true: true,
  no: false,
  n: false,
  false: false,
};

/**
 * Reads yes or no; y, n, true and false too, in capitals or not.
 *
 * @rule yes is true, no is false
 * @source common practice
 * @example
 * readYesNo("yes") // => {"ok":true,"value":true}
 */
export function readYesNo(text: string, options: { readonly path?: Path } = {}): Reading<boolean> {
  requireRecord(options, ["options"]);
  const remedy = "Write yes or no.";
  if (blank(text)) return refused("missing", text, options, "yes or no", remedy);
  const word = typeof text === "string" ? text.trim().toLowerCase() : "";
  const answer = Object.hasOwn(answers, word) ? answers[word] : undefined;
  return answer === undefined
    ? refused("unreadable", text, options, "yes or no", remedy)
    : understood(answer);
}

/** What may be chosen. */
export interface ChoiceOptions<T extends string> {
  readonly path?: Path;
  readonly choices: readonly T[];
}

/**
 * Reads one of a few words, capitals and outer spaces aside.
 *
 * @rule the word is one of the choices
 * @source common practice
 * @example
 * readChoice("Sides", { choices: ["sides", "ends"] }) // => {"ok":true,"value":"sides"}
 */
export function readChoice<const T extends string>(
  text: string,
  options: ChoiceOptions<T>,
): Reading<T> {
  requireRecord(options, ["options"]);
  const names = options.choices.join(", ");
  const remedy = `Choose one of ${names}.`;
  if (blank(text)) return refused("missing", text, options, `one of ${names}`, remedy);
  const word = typeof text === "string" ? text.trim().replace(/\s+/g, " ").toLowerCase() : "";
  const choice = options.choices.find((candidate) => candidate.toLowerCase() === word);
  return choice === undefined
    ? refused("unknown", text, options, `one of ${names}`, remedy)
    : understood(choice);
}
