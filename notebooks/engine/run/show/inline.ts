import type { Figure, Host, Units } from "../../types/index.ts";
import { figureOf, textFigure } from "./figure.ts";
import { limits } from "./limits.ts";
import { capped, isList, isObject, itemsOf, ownKeys, plainText, property } from "./safe.ts";

/** Keys of a record that say something about it and are shown in a place of their own. */
export const asideKeys: ReadonlySet<string> = new Set(["cautions", "problems", "remarks"]);

/**
 * A value as it stands in one field of a table: its figure, or its parts one after the other, cut
 * to so much text.
 */
export function inlineFigure(
  value: unknown,
  host: Host,
  units: Units,
  most: number = limits.cellText,
): Figure {
  const figure = figureOf(value, host, units);
  if (figure !== undefined && figure.text.length <= most) {
    // In a table nobody reads a figure in both systems.
    const { second: _, ...alone } = figure;
    return alone;
  }
  const text = figure?.text ?? inlineText(value, { host, units, depth: 0, left: { length: most } });
  return textFigure(capped(text, most));
}

interface Place {
  readonly host: Host;
  readonly units: Units;
  readonly depth: number;
  /** How much more text there is room for: what comes after is not even printed. */
  readonly left: { length: number };
}

function inlineText(value: unknown, place: Place): string {
  if (value === undefined || value === null) return "";
  const figure = figureOf(value, place.host, place.units);
  if (figure !== undefined) return figure.text;
  if (!isObject(value)) return plainText(value);
  if (place.depth >= limits.depth) return "…";
  if (isList(value)) {
    return joined(itemsOf(value, limits.items), place.depth === 0 ? ", " : " · ", place);
  }
  const keys = ownKeys(value, limits.fields).filter((key) => !asideKeys.has(key));
  return joined(
    keys.map((key) => property(value, key)),
    " ",
    place,
  );
}

function joined(parts: readonly unknown[], between: string, place: Place): string {
  const texts: string[] = [];
  for (const part of parts) {
    if (place.left.length < 0) break;
    const text = inlineText(part, { ...place, depth: place.depth + 1 });
    if (text === "") continue;
    texts.push(text);
    place.left.length -= text.length;
  }
  return texts.join(between);
}
