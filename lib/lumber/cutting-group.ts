import type { Section } from "./section.ts";

/** Pieces of one length and one kind of cut. Sizes include the kerf that parts them from the next. */
export interface PieceClass {
  /** Full length and kerf. */
  readonly sizeU: number;
  /** Length less the shortfall allowed, and kerf. */
  readonly leastU: number;
  readonly demand: number;
  /** Where its pieces stand in the problem. */
  readonly entries: readonly number[];
  readonly mitred: boolean;
}

/** Boards of one length and price. */
export interface BoardKind {
  readonly lengthU: number;
  /** Length and one kerf: n pieces part with n - 1 cuts where they use the board up. */
  readonly capacityU: number;
  /** In coins. */
  readonly cost: number;
  readonly supply: number;
  readonly kept: boolean;
  /** Where its boards stand in the problem. */
  readonly stock: readonly number[];
}

/** What can be planned apart from the rest: the pieces and boards of one section and timber. */
export interface CuttingGroup {
  readonly section: Section;
  /** Empty where neither pieces nor boards name one. */
  readonly timber: string;
  /** Largest first. */
  readonly classes: readonly PieceClass[];
  /** Bought before kept, longest first. */
  readonly kinds: readonly BoardKind[];
  readonly kerfU: number;
  readonly shortfallU: number;
  /** Lengths are shortened by multiples of this. */
  readonly stepU: number;
}

/** What is cut from one board: how many of each class. */
export interface Pattern {
  readonly kind: number;
  readonly counts: readonly number[];
  /** Whether it fits only with pieces shortened. */
  readonly tight: boolean;
}

/** A pattern, and how many boards are cut so. */
export interface PatternUse {
  readonly pattern: Pattern;
  readonly boards: number;
}

export function filledU(counts: readonly number[], sizesU: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < counts.length; i++) sum += (counts[i] ?? 0) * (sizesU[i] ?? 0);
  return sum;
}

export const fullSizes = (group: CuttingGroup): readonly number[] =>
  group.classes.map((each) => each.sizeU);
export const leastSizes = (group: CuttingGroup): readonly number[] =>
  group.classes.map((each) => each.leastU);
export const demands = (group: CuttingGroup): readonly number[] =>
  group.classes.map((each) => each.demand);
