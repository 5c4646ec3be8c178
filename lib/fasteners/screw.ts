import type { Length } from "../measure/index.ts";

/** A screw as sold: a row of the table of screws, or the reader's own. */
export interface Screw {
  readonly length: Length;
  /** Of the shank, over the thread. */
  readonly diameter: Length;
  /** The trade's number, as "10"; left out for metric screws. */
  readonly gauge?: string;
}

/** Which screw does, between what bounds, and what helps where none does. */
export interface ScrewChoice<S extends Screw = Screw> {
  /** The screw to take, as its row was given; `null` where none in stock does. */
  readonly screw: S | null;
  /** No screw may be longer than this, or its point shows. */
  readonly most: Length;
  /** The screw chosen, or the thinnest in stock, must be this long to hold; `null` where any holds. */
  readonly least: Length | null;
  /** Why this screw, or why none, in a sentence. */
  readonly reason: string;
  /** What would help where none does. */
  readonly offers: readonly ScrewOffer[];
}

/** A way out where no screw both holds and hides its point. */
export interface ScrewOffer {
  readonly kind: "thicker" | "bolt" | "shorter-screw" | "side-grain" | "plate";
  readonly text: string;
  /** The least thickness of the piece behind, or the least length of the bolt. */
  readonly size?: Length;
}
