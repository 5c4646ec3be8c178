import { type Path, type Reading, requireRecord } from "../check/index.ts";
import type { Quantity } from "./quantity.ts";
import { refused, understood } from "./read-options.ts";
import { unitOfText } from "./unit-text.ts";

/**
 * Reads a unit as a table's heading or a data package names it: "in", "cu yd", "ft3", "lb/ft3",
 * "kg/m³", "USD/yd3", "in/week", "1/yr", "g/(m2·d)". "%" is the number 0.01, "1" the number 1.
 * Symbols are those that quantities are read with; factors stand beside each other with · or *,
 * those below after one stroke or "per".
 *
 * @rule the product of its factors' exact values
 * @source nist-sp-811
 * @example
 * readUnit("ft") // => {"ok":true,"value":"1 ft"}
 */
export function readUnit(
  text: string,
  options: { readonly path?: Path } = {},
): Reading<Quantity | number> {
  requireRecord(options, ["options"]);
  const allowed = "a unit, as in, ft3, lb/ft3, kg/m3 or %";
  const remedy = "Name a unit of length, area, volume, mass, time or money, or a quotient of them.";
  const isBlank = text === undefined || text === null;
  if (isBlank || (typeof text === "string" && text.trim() === "")) {
    return refused("missing", text, options, allowed, remedy);
  }
  if (typeof text !== "string") return refused("unreadable", text, options, allowed, remedy);
  if (text.trim() === "%") return understood(0.01);
  const unit = unitOfText(text);
  if (unit === undefined) return refused("unreadable", text, options, allowed, remedy);
  return understood(typeof unit === "number" ? unit : numberOr(unit));
}

function numberOr(unit: Quantity): Quantity | number {
  return unit.dim.every((exponent) => exponent === 0) ? unit.si : unit;
}
