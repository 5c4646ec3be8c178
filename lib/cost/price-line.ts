import type { Section } from "../lumber/index.ts";
import type { Length, Mass, Money, Volume } from "../measure/index.ts";

/** What a price is for one of. */
export type PriceForm = "board" | "bag" | "bulk" | "pack" | "roll" | "kit";

interface PriceTerms {
  readonly row: number;
  readonly yard: string;
  /** As written in the price list. */
  readonly item: string;
  /** Price of one size: one board, one bag, one cubic yard. */
  readonly price: Money;
  readonly form: PriceForm;
  /** How many sizes the yard has; undefined where it has enough. */
  readonly limit: number | undefined;
  /** Least number of sizes for this price. */
  readonly from: number;
  /** Sold in multiples of so many sizes: 1, or 0.5 for half cubic yards. */
  readonly step: number;
}

/** A board of a length. */
export interface BoardPrice extends PriceTerms {
  readonly kind: "board";
  readonly section: Section;
  readonly timber: string | undefined;
  readonly length: Length;
}

/** A bag, a load, a pack, a bottle, a coil: something sold by volume, mass, count or length. */
export interface GoodsPrice extends PriceTerms {
  readonly kind: "goods";
  readonly size: GoodsSize;
}

/** What one of it holds. */
export type GoodsSize =
  | { readonly kind: "volume"; readonly volume: Volume }
  | { readonly kind: "mass"; readonly mass: Mass }
  | { readonly kind: "count"; readonly count: number }
  | { readonly kind: "length"; readonly length: Length };

/** A sheet or roll; the longer side is the one that is rolled up. */
export interface SheetPrice extends PriceTerms {
  readonly kind: "sheet";
  /** Its size as written. */
  readonly sides: string;
  readonly length: Length;
  readonly width: Length;
}

/** A whole bed as a kit, for instance of steel. */
export interface KitPrice extends PriceTerms {
  readonly kind: "kit";
  /** Its size as written. */
  readonly sides: string;
  readonly length: Length;
  readonly width: Length;
  readonly height: Length;
}

/** One line of a price list. */
export type PriceLine = BoardPrice | GoodsPrice | SheetPrice | KitPrice;
