import type { Caution, Remark } from "../check/index.ts";
import type { Length, Money } from "../measure/index.ts";
import type { Certificate } from "./certificate.ts";
import type { PiecePart } from "./piece.ts";
import type { Section } from "./section.ts";

/** One piece as it lies on its board. */
export interface CutPiece {
  readonly name: string;
  readonly bed: string;
  readonly part: PiecePart;
  /** Length it is cut to, shortened where the plan says so. */
  readonly length: Length;
  readonly mitred: boolean;
}

/** A board cut in two at the yard: the first of its pieces lie on the first part. */
export interface YardCut {
  /** From the board's start (squaring included) to the cut. */
  readonly first: Length;
  /** How many pieces the first part gives; the others lie on the second. */
  readonly pieces: number;
  /** What is left over of the first part; `offcut` is what is left of the second. */
  readonly rest: Length;
}

/** One board used, with its pieces in the order they are cut. */
export interface CutBoard {
  /** What is chalked on the board: B1, B2, … bought, K1, K2, … kept. */
  readonly board: string;
  /** The yard it comes from, or `kept`. */
  readonly source: string;
  readonly yard: string | null;
  readonly section: Section;
  readonly timber: string;
  readonly length: Length;
  readonly pieces: readonly CutPiece[];
  /** What is left after the last cut; zero where the board is used up. */
  readonly offcut: Length;
  /** What is sawn off first to square the end, that cut included; zero where it is not asked for. */
  readonly squared: Length;
  /** The cut made at the yard so that the board goes on the car; null where there is none. */
  readonly atYard: YardCut | null;
  /** How many times the saw goes through. */
  readonly cutCount: number;
  /** Boards of one layout are cut alike: equal numbers, counted from 1. */
  readonly layout: number;
}

/** One line of the buying list. */
export interface BuyLine {
  readonly yard: string;
  readonly section: Section;
  readonly timber: string;
  readonly length: Length;
  readonly count: number;
  /**
   * Of these, how many no piece is cut from: bought because they are sold by the bundle, cost less
   * from so many on, or make an order large enough to be brought.
   */
  readonly unused: number;
  /** Of one board. */
  readonly price: Money;
  readonly sum: Money;
}

/** Like pieces of a bed that are cut shorter than asked, because that saves a board. */
export interface ShortenedPiece {
  readonly name: string;
  readonly bed: string;
  readonly count: number;
  readonly asked: Length;
  readonly cut: Length;
  readonly short: Length;
}

/** A piece longer than every board, joined of parts over stakes. */
export interface SplicedPiece {
  readonly name: string;
  readonly bed: string;
  readonly count: number;
  readonly asked: Length;
  /** In order, from one end. */
  readonly parts: readonly Length[];
  /** Whether stakes are known to stand at the joints; else they must be set there. */
  readonly onStakes: boolean;
}

/** How sure it is that no plan costs less. */
export type PlanProof =
  | { readonly kind: "optimal" }
  /** The plan costs at most this much more than the cheapest. */
  | { readonly kind: "bound"; readonly above: Money };

/** Which boards to buy, how each is cut, and what that comes to. */
export interface BoardPlan {
  readonly cuts: readonly CutBoard[];
  readonly buy: readonly BuyLine[];
  /** Sum of the boards bought, without tax. */
  readonly cost: Money;
  readonly proof: PlanProof;
  readonly boughtCount: number;
  readonly keptCount: number;
  /** Length of all boards bought, and of the kept boards used. */
  readonly boughtLength: Length;
  readonly keptLength: Length;
  readonly piecesLength: Length;
  readonly cutCount: number;
  /** Share of the length of all boards used that ends up in pieces, 0 to 1. */
  readonly yield: number;
  /** The rest: kerf and offcuts, 0 to 1. */
  readonly waste: number;
  readonly shortened: readonly ShortenedPiece[];
  readonly spliced: readonly SplicedPiece[];
  /** What the offcuts of bought boards are worth, as far as they are worth keeping. */
  readonly offcutWorth: Money;
  /** Why no plan can cost less than its floor. */
  readonly certificate: Certificate;
  readonly remarks: readonly Remark[];
  readonly cautions: readonly Caution[];
}
