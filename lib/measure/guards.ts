import { type Path, type Problem, ProblemError } from "../check/index.ts";
import {
  allowedText,
  type Bounds,
  boundProblem,
  kindExamples,
  kindNoun,
  outOfBounds,
} from "./bounds.ts";
import { sameDimension } from "./dimensions.ts";
import { type Kind, type KindTypes, kindDimensions, requireKind } from "./kinds.ts";
import { isQuantity, type Money, type Quantity } from "./quantity.ts";
import { receivedText } from "./received.ts";

type Code = Problem["code"];

function wrong(code: Code, value: unknown, path: Path, allowed: string, remedy: string): Problem {
  return { code, path, allowed, received: receivedText(value), remedy };
}

function isNothing(value: unknown): value is undefined | null {
  return value === undefined || value === null;
}

/** What is wrong with an argument that should be a quantity of a kind; undefined for nothing. */
export function quantityProblem(
  value: unknown,
  kind: Kind,
  path: Path,
  bounds: Bounds<Quantity> = {},
): Problem | undefined {
  requireKind(kind);
  const sound =
    isQuantity(value) &&
    Number.isFinite(value.si) &&
    sameDimension(value.dim, kindDimensions[kind]);
  // What is right is not put into words: guards run for every bed.
  if (sound && outOfBounds(value, bounds) === undefined) return undefined;
  const noun = kindNoun(kind);
  const allowed = allowedText(noun, bounds);
  const remedy = `Give ${noun}, as ${kindExamples[kind]}.`;
  if (isNothing(value)) return wrong("missing", undefined, path, allowed, remedy);
  if (typeof value === "number" && Number.isFinite(value)) {
    const withUnit =
      kind === "money"
        ? "Make it money, as money(23.5)."
        : `Give it a unit: ${kindExamples[kind]}.`;
    return wrong("wrong-unit", value, path, allowed, withUnit);
  }
  if (!isQuantity(value)) return wrong("unreadable", value, path, allowed, remedy);
  if (!sameDimension(value.dim, kindDimensions[kind])) {
    return wrong("wrong-unit", value, path, allowed, remedy);
  }
  if (!Number.isFinite(value.si)) return wrong("unreadable", value, path, allowed, remedy);
  return boundProblem(value, noun, bounds, { path, received: receivedText(value) });
}

/** What is wrong with an argument that should be a number; undefined for nothing. */
export function numberProblem(
  value: unknown,
  path: Path,
  bounds: Bounds<number> = {},
  noun = "a number",
): Problem | undefined {
  const sound = typeof value === "number" && Number.isFinite(value);
  if (sound && outOfBounds(value, bounds) === undefined) return undefined;
  const allowed = allowedText(noun, bounds);
  const remedy = `Give ${noun} without a unit.`;
  if (isNothing(value)) return wrong("missing", undefined, path, allowed, remedy);
  if (isQuantity(value)) return wrong("wrong-unit", value, path, allowed, remedy);
  if (typeof value !== "number" || !Number.isFinite(value)) {
    return wrong("unreadable", value, path, allowed, remedy);
  }
  return boundProblem(value, noun, bounds, { path, received: receivedText(value) });
}

/** What is wrong with an argument that should be a whole number, from 0 unless bounds say more. */
export function countProblem(
  value: unknown,
  path: Path,
  bounds: Bounds<number> = {},
): Problem | undefined {
  const noun = "a whole number";
  const from = bounds.above === undefined ? { min: 0, ...bounds } : bounds;
  const found = numberProblem(value, path, from, noun);
  if (found !== undefined || Number.isInteger(value)) return found;
  return wrong("unreadable", value, path, allowedText(noun, from), "Give a whole number, as 3.");
}

/** What is wrong with an argument that should be text with something in it. */
export function textProblem(value: unknown, path: Path): Problem | undefined {
  const remedy = "Give a text of at least one letter or digit.";
  const isBlank = typeof value === "string" && value.trim() === "";
  if (isNothing(value) || isBlank)
    return wrong("missing", value ?? undefined, path, "a text", remedy);
  if (typeof value !== "string") return wrong("unreadable", value, path, "a text", remedy);
  return undefined;
}

/** What is wrong with an argument that should be one of a few values. */
export function choiceProblem(
  value: unknown,
  choices: readonly unknown[],
  path: Path,
): Problem | undefined {
  if (choices.includes(value)) return undefined;
  const names = choices.map((choice) => receivedText(choice)).join(", ");
  const code = isNothing(value) ? "missing" : "unknown";
  return wrong(code, value ?? undefined, path, `one of ${names}`, `Choose one of ${names}.`);
}

function refuse(problem: Problem | undefined): void {
  if (problem !== undefined) throw new ProblemError([problem]);
}

/**
 * An argument that must be a quantity of a kind, within bounds that are themselves allowed
 * (`min`, `max`) or not (`above`, `below`). Returned as it is.
 *
 * @throws ProblemError `missing`, `unreadable` (no quantity, or not finite), `wrong-unit` (bare
 * number or another dimension), `too-small`, `too-large`
 * @rule the dimension is the kind's and the value is within the bounds
 * @source common practice
 * @example
 * requireQuantity(foot, "length", ["depth"], { min: inch }) // => 1 ft
 */
export function requireQuantity<K extends Kind>(
  value: unknown,
  kind: K,
  path: Path,
  bounds: Bounds<KindTypes[K]> = {},
): KindTypes[K] {
  refuse(quantityProblem(value, kind, path, bounds as Bounds<Quantity>));
  return value as KindTypes[K];
}

/**
 * An argument that must be money, within bounds.
 *
 * @throws ProblemError as `requireQuantity`
 * @rule the dimension is money and the value is within the bounds
 * @source common practice
 * @example
 * requireMoney(money(5, "USD"), ["price"]) // => $5.00
 */
export function requireMoney(value: unknown, path: Path, bounds: Bounds<Money> = {}): Money {
  return requireQuantity(value, "money", path, bounds);
}

/**
 * An argument that must be a finite number, within bounds.
 *
 * @throws ProblemError `missing`, `unreadable` (no number, or not finite), `wrong-unit` (a
 * quantity), `too-small`, `too-large`
 * @rule the number is finite and within the bounds
 * @source common practice
 * @example
 * requireNumber(0.25, ["share"], { min: 0, max: 1 }) // => 0.25
 */
export function requireNumber(value: unknown, path: Path, bounds: Bounds<number> = {}): number {
  refuse(numberProblem(value, path, bounds));
  return value as number;
}

/**
 * An argument that must be a whole number, from 0 unless the bounds say otherwise.
 *
 * @throws ProblemError as `requireNumber`, and `unreadable` for a fraction
 * @rule the number is whole and within the bounds
 * @source common practice
 * @example
 * requireCount(3, ["courses"], { min: 1 }) // => 3
 */
export function requireCount(value: unknown, path: Path, bounds: Bounds<number> = {}): number {
  refuse(countProblem(value, path, bounds));
  return value as number;
}

/**
 * An argument that must be text with something in it.
 *
 * @throws ProblemError `missing` (nothing, or blank), `unreadable` (no text)
 * @rule the text is not blank
 * @source common practice
 * @example
 * requireText("A-1", ["bed"]) // => "A-1"
 */
export function requireText(value: unknown, path: Path): string {
  refuse(textProblem(value, path));
  return value as string;
}

/**
 * An argument that must be one of a few values.
 *
 * @throws ProblemError `missing`, `unknown` (listing what is allowed)
 * @rule the value is one of the choices
 * @source common practice
 * @example
 * requireChoice("sides", ["sides", "ends"], ["lap"]) // => "sides"
 */
export function requireChoice<const T>(value: unknown, choices: readonly T[], path: Path): T {
  refuse(choiceProblem(value, choices, path));
  return value as T;
}
