import { kindExamples } from "./bounds.ts";
import { currencySigns, isCurrencyCode } from "./currency.ts";
import { tidy } from "./decimal.ts";
import { moneyDimension, productDimension, sameDimension } from "./dimensions.ts";
import { type Kind, kindDimensions } from "./kinds.ts";
import { plainText, unsignedNumber } from "./number-in-text.ts";
import { type Quantity, quantity } from "./quantity.ts";
import { unitOfText } from "./unit-text.ts";

type Failure = { readonly code: "unreadable" | "wrong-unit"; readonly remedy: string };

const example = "Write 23.50, $23.50, €12 or 12.50 CHF.";

function codeOf(mark: string): string | undefined {
  const sign = Object.hasOwn(currencySigns, mark) ? currencySigns[mark] : undefined;
  const code = sign ?? mark.toUpperCase();
  return isCurrencyCode(code) ? code : undefined;
}

/** Money as written: the sign or code before or after the number, or neither. */
export function readMoneyText(text: string, decimal: "." | ","): Quantity | Failure {
  const plain = plainText(text);
  const found = /^(-?) ?([^\d.,\s-]*) ?(-?) ?([\d.,][\d., ]*?) ?([^\d.,\s-]*)$/.exec(plain);
  if (found === null) return { code: "unreadable", remedy: example };
  const [, minus = "", before = "", inner = "", digits = "", after = ""] = found;
  const signed = minus !== "" || inner !== "";
  const marks = [before, after].filter((mark) => mark !== "");
  if (marks.length > 1 || (minus !== "" && inner !== ""))
    return { code: "unreadable", remedy: example };
  const number = unsignedNumber(digits, decimal);
  if ("trouble" in number) {
    return { code: "unreadable", remedy: `It could not be read: ${number.trouble}. ${example}` };
  }
  const size = signed ? 0 - number.value : number.value;
  const [mark] = marks;
  if (mark === undefined) return quantity(size, moneyDimension);
  const code = codeOf(mark);
  if (code !== undefined) return quantity(size, moneyDimension, code);
  const isUnit = unitOfText(mark) !== undefined;
  const remedy = isUnit
    ? `“${mark}” is no currency. ${example}`
    : `“${mark}” is no currency known here: write a sign ($, €, £) or a code of ISO 4217. ${example}`;
  return { code: isUnit ? "wrong-unit" : "unreadable", remedy };
}

/** A price per unit as written: money, a stroke or "per", a unit. */
export function readPriceText(
  text: string,
  kind: Kind,
  decimal: "." | ",",
  bare: Quantity | undefined,
): Quantity | Failure {
  const plain = plainText(text).replace(/ per (?:one )?/i, "/");
  const stroke = plain.indexOf("/");
  const amount = readMoneyText(stroke < 0 ? plain : plain.slice(0, stroke), decimal);
  if ("remedy" in amount) return { code: amount.code, remedy: `Write ${kindExamples[kind]}.` };
  const dim = kindDimensions[kind];
  if (stroke < 0) {
    if (bare === undefined)
      return { code: "wrong-unit", remedy: `Say per what: ${kindExamples[kind]}.` };
    return quantity(tidy(amount.si * bare.si), dim, amount.currency ?? bare.currency) as Quantity;
  }
  const unit = unitOfText(plain.slice(stroke + 1));
  if (unit === undefined) {
    return {
      code: "unreadable",
      remedy: `What stands after the stroke is no unit known here. Write ${kindExamples[kind]}.`,
    };
  }
  const made = productDimension(amount.dim, unit.dim, -1);
  if (made === undefined || !sameDimension(made, dim)) {
    return {
      code: "wrong-unit",
      remedy: `That is a price per something else. Write ${kindExamples[kind]}.`,
    };
  }
  return quantity(tidy(amount.si / unit.si), dim, amount.currency) as Quantity;
}
