import type { Length, Money } from "../measure/index.ts";
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
}

/** All that is needed to say which boards to buy and how to cut them. */
export interface BoardProblem {
  readonly pieces: readonly Piece[];
  readonly stock: readonly StockBoard[];
  /** Width of the saw cut, from 0 to 1/2 in. */
  readonly kerf: Length;
  /** How much shorter than asked a piece may be cut where that saves a board, from 0 to 1 in. */
  readonly shortfall: Length;
}
