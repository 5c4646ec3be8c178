import type { Figure, Host, Units } from "../../types/index.ts";
import { figureOf, textFigure } from "./figure.ts";
import { limits } from "./limits.ts";
import { capped, isList, isObject, itemsOf, ownKeys, plainText, property } from "./safe.ts";

/** Keys of a record that say something about it and are shown in a place of their own. */
export const asideKeys: ReadonlySet<string> = new Set(["cautions", "problems", "remarks"]);

/** A value as it stands in one field of a table: its figure, or its parts one after the other. */
export function inlineFigure(value: unknown, host: Host, units: Units): Figure {
  const figure = figureOf(value, host, units);
  if (figure !== undefined && figure.text.length <= limits.cellText) return figure;
  return textFigure(capped(figure?.text ?? inlineText(value, host, units, 0), limits.cellText));
}

function inlineText(value: unknown, host: Host, units: Units, depth: number): string {
  if (value === undefined || value === null) return "";
  const figure = figureOf(value, host, units);
  if (figure !== undefined) return figure.text;
  if (!isObject(value)) return plainText(value);
  if (depth >= limits.depth) return "…";
  const part = (inner: unknown) => inlineText(inner, host, units, depth + 1);
  if (isList(value)) {
    const items = itemsOf(value as readonly unknown[], limits.items);
    return items
      .map(part)
      .filter(notEmpty)
      .join(depth === 0 ? ", " : " · ");
  }
  return ownKeys(value, limits.fields)
    .filter((key) => !asideKeys.has(key))
    .map((key) => part(property(value, key)))
    .filter(notEmpty)
    .join(" ");
}

function notEmpty(text: string): boolean {
  return text !== "";
}
