import type { Figure, Host, Units } from "../../types/index.ts";
import { limits } from "./limits.ts";
import { capped, isA, property, tried } from "./safe.ts";

/** The value as the library prints it, or as a plain number or word; undefined for anything else. */
export function figureOf(value: unknown, host: Host, units: Units): Figure | undefined {
  switch (typeof value) {
    case "string":
      return textFigure(value);
    case "boolean":
      return textFigure(value ? "yes" : "no");
    case "bigint":
      return textFigure(String(value));
    case "number":
      return tried(() => host.print(value, units), undefined) ?? textFigure(numberText(value));
    case "object":
      return value === null ? undefined : printed(value, host, units);
    default:
      return undefined;
  }
}

export function textFigure(text: string): Figure {
  const cut = capped(text, limits.text);
  return { text: cut, number: cut, unit: "" };
}

function printed(value: object, host: Host, units: Units): Figure | undefined {
  const figure = tried(() => host.print(value, units), undefined);
  if (figure !== undefined) return figure;
  if (isA(value, Date)) return textFigure(tried(() => value.toISOString(), "no date"));
  return undefined;
}

/** At most six digits that count, without an exponent for figures of everyday size. */
export function numberText(value: number): string {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? "not a number" : "without end";
  if (Number.isInteger(value)) return String(value);
  return String(Number(value.toPrecision(6)));
}

/** Whether a value is one of the library's, so that it is a figure and no record. */
export function isPrintable(value: unknown, host: Host, units: Units): boolean {
  if (typeof value !== "object" || value === null) return false;
  return property(value, "entry") === undefined && printed(value, host, units) !== undefined;
}
