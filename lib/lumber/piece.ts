import type { Length } from "../measure/index.ts";
import type { Section } from "./section.ts";

/** What a piece is in its bed. */
export type PiecePart = "side" | "end" | "cap-side" | "cap-end" | "stake" | "other";

/** Like pieces of one bed: they are cut to one length and may change places. */
export interface Piece {
  /** What is written on the piece: "A-1 side". */
  readonly name: string;
  /** The bed it belongs to: "A-1". */
  readonly bed: string;
  readonly part: PiecePart;
  readonly section: Section;
  readonly timber?: string;
  /** Length to cut; of a mitred piece from long point to long point. */
  readonly length: Length;
  /** How many are alike. */
  readonly count: number;
  /** Whether its ends are cut at 45 degrees, so that a cut takes 1.41 times the kerf. */
  readonly mitred?: boolean;
  /** How far from one end stakes stand behind it, where it may be joined. Default: none known. */
  readonly stakesAt?: readonly Length[];
}
