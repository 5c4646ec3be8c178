import type { LinedBed, LinerCutting } from "../liner/index.ts";
import type { Density, Length, Range, Volume } from "../measure/index.ts";

/** How much of a need belongs to which bed, as weights of any scale. */
export interface BedShare {
  readonly bed: string;
  readonly share: number;
}

interface NeedTerms {
  /** What is bought, as the price list names it: `compost`, `corner plate`, `liner`. */
  readonly item: string;
  /** What it is for, as it stands in the bill: "fill", "top-dressing". */
  readonly use: string;
  readonly shares: readonly BedShare[];
}

/** So much of a loose material or of a liquid. */
export interface VolumeNeed extends NeedTerms {
  readonly kind: "volume";
  readonly volume: Volume;
  /** What it weighs as sold; needed where it is sold by mass, and for what the car carries. */
  readonly density?: Range<Density>;
}

/** So many of a thing. */
export interface CountNeed extends NeedTerms {
  readonly kind: "count";
  readonly count: number;
}

/** Sheet that lines beds, in strips cut from rolls. */
export interface LiningNeed extends NeedTerms {
  readonly kind: "lining";
  readonly beds: readonly LinedBed[];
  readonly strip: LinerCutting;
}

/** Sheet or mesh on the floor of beds. */
export interface FloorNeed extends NeedTerms {
  readonly kind: "floor";
  readonly floor: "sheet" | "mesh";
  readonly beds: readonly LinedBed[];
  readonly lap?: Length;
}

/** Something to buy, boards apart. */
export type Need = VolumeNeed | CountNeed | LiningNeed | FloorNeed;
