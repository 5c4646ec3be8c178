import type { Length, Money } from "../measure/index.ts";
import type { OffcutWorth } from "./board-problem.ts";

/** What one kind of piece is valued at in a certificate. */
export interface PieceValue {
  readonly section: string;
  readonly timber: string;
  /** What it takes of a board: its length, less the allowance, and the saw cut that parts it. */
  readonly takes: Length;
  readonly count: number;
  /** In money to 1/100,000 of the minor unit. */
  readonly value: Money;
}

/** What boards of one length and price are worth at most, cut into pieces so valued. */
export interface BoardWorth {
  /** Null for boards kept. */
  readonly yard: string | null;
  readonly section: string;
  readonly timber: string;
  readonly length: Length;
  /** What can be filled: the length less squaring, and one saw cut that its end saves. */
  readonly room: Length;
  /** Of each part, where the board is cut in two at the yard, with one saw cut; null where it is not. */
  readonly partRoom: Length | null;
  /** Price of one, tax and its share of the trips in it, less what a price break gives back. */
  readonly price: Money;
  /** The most valuable filling; above `price` only where there is a limit. */
  readonly worth: Money;
  /** How many there are; null where there is no limit. */
  readonly limit: number | null;
  /** What limited boards can save at most: limit x (worth - price) where that is above zero. */
  readonly rebate: Money;
}

/** Another part of a floor, above or below zero: goods, trips, delivery, a price break. */
export interface FloorPart {
  readonly what: string;
  readonly sum: Money;
}

/**
 * Why no plan can cost less than `floor`: every piece has a value such that no board without a limit
 * yields more than its price. All pieces at their values, less what the limited boards can save at
 * most, and the other parts, are the floor.
 */
export interface Certificate {
  readonly pieces: readonly PieceValue[];
  readonly boards: readonly BoardWorth[];
  readonly others: readonly FloorPart[];
  /** The saw cut, which an offcut still loses. */
  readonly kerf: Length;
  /** What offcuts of bought boards are worth; null where nothing. */
  readonly offcuts: OffcutWorth | null;
  readonly floor: Money;
}
