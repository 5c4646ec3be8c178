import type { CellPlace } from "../table/index.ts";

/** Whether a text is digits and marks alone, without a unit. */
export function isBareNumber(text: string): boolean {
  return /^[-+]?[\d.,\s/]+$/.test(text);
}

/**
 * The text with the heading's unit behind a bare number. Where a field may hold several kinds of
 * quantity, the unit is written out: a reader of one kind refuses the heading of another.
 */
export function withHeadingUnit(text: string, { unit }: CellPlace): string {
  return unit !== undefined && isBareNumber(text) ? `${text} ${unit}` : text;
}
