import type { CellId, Figure, Measure } from "../types/index.ts";

/** What the answer became with one text in an entry. */
export interface Outcome {
  /** What stood in the entry, as a person reads it. */
  readonly text: string;
  readonly figure: Figure;
  readonly measure: Measure;
  readonly cutShort?: boolean;
}

/** How far an answer moves when one entry goes over its range and the others stay as they are. */
export interface Effect {
  readonly id: CellId;
  /** The lowest and the highest answer over the range, the present one among them. */
  readonly low: Outcome;
  readonly high: Outcome;
  /** From the lowest to the highest, in coherent SI. */
  readonly size: number;
  /** All that was tried, in its order. */
  readonly tried: readonly Outcome[];
}

/** The effect of an entry; undefined where none of what was tried can be compared with the present. */
export function effectOf(
  id: CellId,
  present: Outcome,
  tried: readonly Outcome[],
): Effect | undefined {
  const alike = tried.filter(({ measure }) => measure.of === present.measure.of);
  if (alike.length === 0) return undefined;
  const all = [present, ...alike];
  const low = all.reduce((a, b) => (b.measure.likely < a.measure.likely ? b : a));
  const high = all.reduce((a, b) => (b.measure.likely > a.measure.likely ? b : a));
  return { id, low, high, size: high.measure.likely - low.measure.likely, tried: alike };
}

/** The largest effect first; those as large keep their order. */
export function ranked(effects: readonly Effect[]): readonly Effect[] {
  return effects.toSorted((a, b) => b.size - a.size);
}
