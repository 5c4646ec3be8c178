import type { Length, Money, PricePerLength } from "../measure/index.ts";
import type { Piece } from "./piece.ts";
import type { Section } from "./section.ts";

/** Boards of one length that may be bought at a yard, or that were kept. */
export interface StockBoard {
  /** The yard that sells them; `null` for boards kept, which cost nothing. */
  readonly yard: string | null;
  readonly section: Section;
  /** As `treated` or `cedar`; absent where the section comes in one timber only. */
  readonly timber?: string;
  /** Usable length: of a kept board what is sound. */
  readonly length: Length;
  /** Price of one board; zero is allowed, and is what a kept board costs. */
  readonly price: Money;
  /** How many there are. Default: no limit at a yard, 1 of a kept board. */
  readonly limit?: number;
  /** Least number that must be bought for this price. Default 1; 1 for a kept board. */
  readonly from?: number;
  /** Sold in multiples of so many. Default 1. */
  readonly step?: number;
}

/** Offcuts that are worth keeping. */
export interface OffcutWorth {
  /** The shortest that is kept. */
  readonly from: Length;
  /** What a length of it is worth; less than any board costs by length. */
  readonly worth: PricePerLength;
}

/** All that is needed to say which boards to buy and how to cut them. */
export interface BoardProblem {
  readonly pieces: readonly Piece[];
  readonly stock: readonly StockBoard[];
  /** Width of the saw cut, from 0 to 1/2 in. */
  readonly kerf: Length;
  /** How much shorter than asked a piece may be cut where that saves a board, from 0 to 1 in. */
  readonly shortfall: Length;
  /**
   * What is sawn off one end of every board to square it, that cut included, from 0 to 2 ft.
   * Default: nothing, and no cut.
   */
  readonly squaring?: Length;
  /** What offcuts of bought boards are worth. Default: nothing. */
  readonly offcuts?: OffcutWorth;
  /** Whether a piece longer than every board may be joined over a stake. Default: false. */
  readonly splice?: boolean;
  /** The longest board that can be fetched whole. Default: any. */
  readonly loadLength?: Length;
  /**
   * Whether a board longer than that may be cut in two at the yard, each part no longer than
   * `loadLength`. Default: false, such boards are left out.
   */
  readonly cutAtYard?: boolean;
}
