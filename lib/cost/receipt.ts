import type { Length, Mass, Money, Volume } from "../measure/index.ts";
import type { BedShare } from "./need.ts";
import type { PriceForm } from "./price-line.ts";

/** How much one size is, as far as it is one quantity; a text for sheets and kits. */
export type SizeShown = Length | Volume | Mass | number | string;

/** Something bought at a yard: so many sizes at a price. */
export interface Bought {
  readonly item: string;
  /** What it is for: "boards", "fill", "liner". */
  readonly use: string;
  readonly size: SizeShown;
  readonly form?: PriceForm;
  /** Of a board: its section's name and its timber, empty where none is named. */
  readonly board?: { readonly section: string; readonly timber: string };
  /** How many sizes; a fraction where bulk is sold by the half. */
  readonly count: number;
  /** Of one size. */
  readonly price: Money;
  /** Whether the yard brings it; else it is fetched. Default: false. */
  readonly delivered?: boolean;
  /** Of all of it, for what the car carries. Default: not known, not counted. */
  readonly mass?: Mass;
  /** Which beds it is for, by weights. Default: none in particular. */
  readonly shares?: readonly BedShare[];
}

/** A line of a receipt: what was bought, and count x price rounded to the minor unit. */
export interface ReceiptLine extends Bought {
  readonly total: Money;
}

/** What one yard is paid, and what fetching costs. The parts add up to `total` to the minor unit. */
export interface YardReceipt {
  readonly yard: string;
  readonly lines: readonly ReceiptLine[];
  /** Sum of the lines. */
  readonly goods: Money;
  /** Nothing where nothing is brought. */
  readonly delivery: Money;
  /** Tax on top; with prices that include tax, the part of them that is tax. */
  readonly tax: Money;
  readonly taxIncluded: boolean;
  readonly trips: number;
  readonly tripCost: Money;
  readonly total: Money;
}
