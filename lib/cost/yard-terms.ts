import type { Length, Mass, Money } from "../measure/index.ts";

/** What a yard asks besides its prices. */
export interface YardTerms {
  readonly yard: string;
  /** What one trip there and back costs; untaxed. */
  readonly tripCost?: Money | undefined;
  /** Tax as a share: 0.06 for 6 %. */
  readonly tax: number;
  readonly taxOn: "goods" | "goods and delivery";
  /** What one order costs to bring; undefined where the yard brings nothing. */
  readonly delivery?: Money | undefined;
  /** The least order that is brought, before tax. */
  readonly deliveryFrom?: Money | undefined;
  /** One way; for hours and never for money. */
  readonly distance?: Length | undefined;
  /** What the car carries on the way from this yard, where it is not what it carries elsewhere. */
  readonly payload?: Mass | undefined;
}
