// Cutting in plain whole numbers: lengths in units (U) of 1/320 mm, costs in grains of 1/100,000 of
// money's minor unit. Quantities, names and sections are the business of the folders above.

/** So many grains are one minor unit (a cent). */
export const grainsPerMinor = 100_000;

/** Pieces of one length. Sizes include the saw cut that parts them from the next. */
export interface CutClass {
  /** The least that will do: length less the allowance, and the saw cut. */
  readonly leastU: number;
  /** Full length and the saw cut. */
  readonly fullU: number;
  readonly demand: number;
}

/** Boards of one length and price. */
export interface CutKind {
  /** Usable length and one saw cut: n pieces part with n - 1 cuts where they use the board up. */
  readonly capacityU: number;
  /**
   * Where the board is cut in two first: the most that the first and the second part can hold, with
   * one saw cut each; the two share `capacityU`. Null for boards left whole.
   */
  readonly partsU: readonly [first: number, second: number] | null;
  /** In grains. */
  readonly cost: number;
  /** How many there are at most; `Infinity` where there is no limit. */
  readonly supply: number;
  /** Used for so many boards at least, or for none, as a price break asks; 0 or 1 for any number. */
  readonly from: number;
  /** How many must be used at least. */
  readonly least: number;
  /** Bought in multiples of so many. */
  readonly step: number;
  /** Whether what is left of it may be worth something. */
  readonly bought: boolean;
}

/** What what is left is worth. */
export interface RestWorth {
  readonly fromU: number;
  /** Grains for each unit of length. */
  readonly perU: number;
}

/** What can be planned apart from the rest: pieces and boards of one section and timber. */
export interface CutPart {
  /** Largest first. */
  readonly classes: readonly CutClass[];
  readonly kinds: readonly CutKind[];
  readonly kerfU: number;
  readonly rests: RestWorth | null;
}

/** What is cut from one board: how many of each class. */
export interface Pattern {
  readonly kind: number;
  readonly counts: readonly number[];
}

/** A pattern, and how many boards are cut so. */
export interface PatternUse {
  readonly pattern: Pattern;
  readonly boards: number;
}

export const endless = Number.POSITIVE_INFINITY;

export const isEndless = (kind: { readonly supply: number }): boolean => kind.supply === endless;

export function filledU(counts: readonly number[], sizesU: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < counts.length; i++) sum += (counts[i] ?? 0) * (sizesU[i] ?? 0);
  return sum;
}

export const leastSizes = (part: CutPart): readonly number[] =>
  part.classes.map((each) => each.leastU);
export const fullSizes = (part: CutPart): readonly number[] =>
  part.classes.map((each) => each.fullU);

export function patternKey({ kind, counts }: Pattern): string {
  let key = `${kind}:`;
  for (let i = 0; i < counts.length; i++) if (counts[i] !== 0) key += `${i}x${counts[i]},`;
  return key;
}

/** What is left of a board (or a part of one) that holds so much, the last saw cut taken off. */
export function restGrains(part: CutPart, roomU: number, usedU: number): number {
  const { rests, kerfU } = part;
  if (rests === null) return 0;
  const restU = roomU - usedU - kerfU;
  return restU >= rests.fromU && restU > 0 ? Math.floor(restU * rests.perU) : 0;
}

/** The longest that one piece may be, with its saw cut, on a board of this kind. */
export const longestU = ({ capacityU, partsU }: CutKind): number =>
  partsU === null ? capacityU : Math.min(capacityU, Math.max(...partsU));

/** Whether a kind may be used for any number of boards up to its limit. */
export const isPlain = ({ from, least, step }: CutKind): boolean =>
  from <= 1 && least === 0 && step === 1;
