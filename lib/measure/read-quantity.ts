import { ProblemError, type Reading } from "../check/index.ts";
import { allowedText, type Bounds, boundProblem, kindExamples, kindNoun } from "./bounds.ts";
import { tidy } from "./decimal.ts";
import { sameDimension } from "./dimensions.ts";
import {
  dimensionInWords,
  type Kind,
  type KindTypes,
  kindDimensions,
  requireKind,
  withArticle,
} from "./kinds.ts";
import { isQuantity, type Quantity, quantity } from "./quantity.ts";
import { readMoneyText, readPriceText } from "./read-money.ts";
import { type ReadOptions, refused, requireReadOptions, understood } from "./read-options.ts";
import { type MeasuredPart, measuredParts } from "./read-parts.ts";
import { receivedText } from "./received.ts";
import { unitHint } from "./unit-hints.ts";
import { unitOfText } from "./unit-text.ts";

/** The unit a bare number takes; a unit that is not of the kind is the caller's mistake. */
function bareUnit(kind: Kind, unit: string | Quantity | undefined): Quantity | undefined {
  if (unit === undefined) return undefined;
  const found = typeof unit === "string" ? unitOfText(unit) : unit;
  if (isQuantity(found) && sameDimension(found.dim, kindDimensions[kind])) return found;
  throw new ProblemError([
    {
      code: "wrong-unit",
      path: ["unit"],
      allowed: `a unit of ${kind}`,
      received: receivedText(unit),
      remedy: `Name a unit that ${withArticle(kind)} is measured in.`,
    },
  ]);
}

type Failure = { readonly code: "unreadable" | "wrong-unit"; readonly remedy: string };

function partSi(part: MeasuredPart, kind: Kind, bare: Quantity | undefined): number | Failure {
  const unit = part.symbol === "" ? bare : unitOfText(part.symbol);
  if (part.symbol === "" && unit === undefined) {
    return { code: "wrong-unit", remedy: `Add the unit: ${kindExamples[kind]}.` };
  }
  const hint = unitHint(part.symbol, kind);
  if (hint !== undefined)
    return { code: unit === undefined ? "unreadable" : "wrong-unit", remedy: hint };
  if (unit === undefined) {
    return {
      code: "unreadable",
      remedy: `“${part.symbol}” is no unit known here. Write ${kindExamples[kind]}.`,
    };
  }
  if (!sameDimension(unit.dim, kindDimensions[kind])) {
    const other = withArticle(dimensionInWords(unit.dim));
    return { code: "wrong-unit", remedy: `That is ${other}. Write ${kindExamples[kind]}.` };
  }
  return tidy(part.value * unit.si);
}

function siOfText(text: string, kind: Kind, options: ReadOptions<Quantity>): number | Failure {
  const raised = kind !== "length";
  const found = measuredParts(text, options.decimal ?? ".", raised);
  if ("trouble" in found) {
    const remedy = `It could not be read: ${found.trouble}. Write ${kindExamples[kind]}.`;
    return { code: "unreadable", remedy };
  }
  const bare = found.parts.length === 1 ? bareUnit(kind, options.unit) : undefined;
  let sum = 0;
  let before = Number.POSITIVE_INFINITY;
  for (const part of found.parts) {
    const si = partSi(part, kind, bare);
    if (typeof si !== "number") return si;
    const unitSi = part.symbol === "" ? 1 : (unitOfText(part.symbol)?.si ?? 1);
    if (unitSi >= before) {
      return { code: "unreadable", remedy: `Write larger units first, as ${kindExamples[kind]}.` };
    }
    if (before !== Number.POSITIVE_INFINITY && !Number.isInteger(tidy(sum / before))) {
      return { code: "unreadable", remedy: "Only the last and smallest unit may have a fraction." };
    }
    before = unitSi;
    sum = tidy(sum + si);
  }
  return found.negative ? 0 - sum : sum;
}

/**
 * Reads a quantity as people write it: a number with its unit ("8 ft", `99 1/2"`, "2.4 m",
 * "60 L", "40 lb"), several units from large to small (`8' 3 1/2"`, "5 lb 4 oz"), money with sign
 * or code ("$23.50", "12.50 EUR", "23.50"), prices per unit ("$38 / cu yd"). A bare number takes
 * `unit`, or is refused.
 *
 * @throws ProblemError for a kind that is none (`unknown`), a `unit` or bounds that are not of the
 * kind (`wrong-unit`)
 * @rule the number times the exact value of its unit
 * @source nist-sp-811
 * @example
 * readQuantity("8' 3 1/2\"", "length").ok // => true
 */
export function readQuantity<K extends Kind>(
  text: string,
  kind: K,
  options: ReadOptions<KindTypes[K]> = {},
): Reading<KindTypes[K]> {
  const reading = readAny(text, kind, options as ReadOptions<Quantity>);
  return reading as Reading<KindTypes[K]>;
}

function readAny(text: string, kind: Kind, options: ReadOptions<Quantity>): Reading<Quantity> {
  requireKind(kind);
  requireReadOptions(options, kind);
  const bounds: Bounds<Quantity> = options;
  const noun = kindNoun(kind);
  const allowed = () => allowedText(noun, bounds);
  if (typeof text !== "string" || text.trim() === "") {
    const code =
      typeof text === "string" || text === undefined || text === null ? "missing" : "unreadable";
    return refused(code, text ?? "", options, allowed(), `Write ${kindExamples[kind]}.`);
  }
  const value = read(text, kind, options);
  if ("remedy" in value) return refused(value.code, text, options, allowed(), value.remedy);
  const path = options.path ?? [];
  const problem = boundProblem(value, noun, bounds, { path, received: text });
  return problem === undefined ? understood(value) : { ok: false, problem };
}

/** Money; without a sign it takes the currency of the unit, as of a heading. */
function readSum(text: string, options: ReadOptions<Quantity>): Quantity | Failure {
  const bare = bareUnit("money", options.unit);
  const sum = readMoneyText(text, options.decimal ?? ".");
  if ("remedy" in sum || sum.currency !== undefined || bare === undefined) return sum;
  return quantity(sum.si, sum.dim, bare.currency) as Quantity;
}

function read(text: string, kind: Kind, options: ReadOptions<Quantity>): Quantity | Failure {
  if (kind === "money") return readSum(text, options);
  if (kind.startsWith("price")) {
    return readPriceText(text, kind, options.decimal ?? ".", bareUnit(kind, options.unit));
  }
  const si = siOfText(text, kind, options);
  return typeof si === "number" ? (quantity(si, kindDimensions[kind]) as Quantity) : si;
}
