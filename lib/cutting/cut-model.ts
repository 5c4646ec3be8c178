import type { CutPart, Pattern } from "./cut-part.ts";

/** A row that ties parts together: a sum over the boards used and other decisions. */
export interface Link {
  readonly is: "least" | "most" | "equal";
  readonly amount: number;
  /** What one board counts: by part, by kind. */
  readonly boards: readonly (readonly number[])[];
}

/** A decision besides boards: trips, where a thing is bought. */
export interface Extra {
  /** In grains. */
  readonly cost: number;
  /** The most it may be. */
  readonly most: number;
  /** What one of it counts in each link. */
  readonly links: readonly number[];
}

/** Parts that are planned together. */
export interface CutModel {
  readonly parts: readonly CutPart[];
  readonly links: readonly Link[];
  readonly extras: readonly Extra[];
}

export const aloneModel = (part: CutPart): CutModel => ({ parts: [part], links: [], extras: [] });

/** What pieces and boards are worth, and the floor that follows: no plan costs less. In grains. */
export interface Worth {
  /** Of a piece of each class, by part. Whole numbers. */
  readonly values: readonly (readonly number[])[];
  /** What a unit in each link is worth. */
  readonly links: readonly number[];
  /** What a price break gives back on each board of a kind, by part. */
  readonly breaks: readonly (readonly number[])[];
  /** What a board of each kind costs with links and breaks counted, by part. */
  readonly prices: readonly (readonly number[])[];
  /** The most valuable filling of each kind, by part. */
  readonly fillings: readonly (readonly number[])[];
  readonly floor: number;
}

/** How much more a pattern costs than its pieces are worth; never below zero, but for a hair. */
export function lossOf(
  worth: Worth,
  part: number,
  { pattern, rest }: { readonly pattern: Pattern; readonly rest: number },
): number {
  const { kind, counts } = pattern;
  const price = worth.prices[part]?.[kind] ?? 0;
  const filling = worth.fillings[part]?.[kind] ?? 0;
  const values = worth.values[part] ?? [];
  let sum = Math.max(price, filling) - rest;
  for (let i = 0; i < counts.length; i++) sum -= (counts[i] ?? 0) * (values[i] ?? 0);
  return sum;
}
