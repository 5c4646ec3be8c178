import { type Problem, ProblemError } from "../check/index.ts";
import { dimensionInWords, withArticle } from "./kinds.ts";
import { isQuantity } from "./quantity.ts";
import { described, receivedText } from "./received.ts";

/** What an operator does, for its refusal: the sign, and "a … can't be added to b". */
export interface Operation {
  readonly sign: string;
  readonly verb: string;
  /** Words between the two: "added to", "taken from". */
  readonly allowed: string;
  readonly remedy: string;
}

function received(a: unknown, sign: string, b: unknown): string {
  return `${receivedText(a) || "nothing"} ${sign} ${receivedText(b) || "nothing"}`;
}

function refusal(code: Problem["code"], operation: Operation, a: unknown, b: unknown): Problem {
  return {
    code,
    path: [],
    allowed: operation.allowed,
    received: received(a, operation.sign, b),
    remedy: operation.remedy,
  };
}

/** The error of two values that can't be combined: it names both, printed. */
export function cannotCombine(operation: Operation, a: unknown, b: unknown): ProblemError {
  const code =
    a === undefined || a === null || b === undefined || b === null ? "missing" : "wrong-unit";
  const remedy = `${operation.remedy}${unitHint(operation, a, b)}`;
  const words = `${described(a)} can't be ${operation.verb} ${described(b)}. ${remedy}`;
  // The record's sentence begins with what was received; what the two are comes before the remedy.
  const kinds = `${kindOf(a)} can't be ${operation.verb} ${kindOf(b)}.`;
  const named = `${kinds.charAt(0).toUpperCase()}${kinds.slice(1)} ${remedy}`;
  return new ProblemError([refusal(code, { ...operation, remedy: named }, a, b)], words);
}

function kindOf(value: unknown): string {
  if (isQuantity(value)) return withArticle(dimensionInWords(value.dim));
  return described(value).replace(/ \(.*\)$/s, "");
}

const handyUnits: Readonly<Record<string, string>> = {
  length: "inch",
  area: "squareFoot",
  volume: "cubicFoot",
  mass: "pound",
};

/** Where a bare number meets a quantity, what is mostly missing is its unit. */
function unitHint({ sign }: Operation, a: unknown, b: unknown): string {
  const [bare, other] = isQuantity(a) ? [b, a] : [a, b];
  const isNumber = typeof bare === "number" && Number.isFinite(bare);
  if (!isNumber || !isQuantity(other) || sign === "**") return "";
  const unit = handyUnits[dimensionInWords(other.dim)];
  return unit === undefined ? "" : ` Or give the number a unit: ${bare} * ${unit}.`;
}

/** The error of money in two currencies. */
export function mixedCurrency(operation: Operation, a: unknown, b: unknown): ProblemError {
  const mixed = {
    ...operation,
    allowed: "money of one currency",
    remedy: "Give both in one currency; nothing is exchanged here.",
  };
  const words = `${described(a)} can't be ${operation.verb} ${described(b)}: two currencies. ${mixed.remedy}`;
  return new ProblemError([refusal("mixed-currency", mixed, a, b)], words);
}

/** The error of a result that is not a finite number, as of a division by zero. */
export function noResult(operation: Operation, a: unknown, b: unknown): ProblemError {
  const zero = {
    ...operation,
    allowed: "a finite result",
    remedy: "Check for a zero or a value far too large.",
  };
  const words = `${described(a)} ${operation.sign} ${described(b)} has no finite result. ${zero.remedy}`;
  return new ProblemError([refusal("unreadable", zero, a, b)], words);
}
