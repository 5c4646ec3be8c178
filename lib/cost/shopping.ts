import type { Mass } from "../measure/index.ts";
import type { Need } from "./need.ts";
import type { PriceLine } from "./price-line.ts";
import type { Bought, YardReceipt } from "./receipt.ts";
import type { YardTerms } from "./yard-terms.ts";

/** What is to be bought, where it is sold, and how it is fetched. */
export interface Shopping {
  /** Boards already chosen. */
  readonly boards: readonly BoughtBoards[];
  readonly needs: readonly Need[];
  readonly prices: readonly PriceLine[];
  readonly yards: readonly YardTerms[];
  /** ISO 4217 code of all prices. */
  readonly currency: string;
  readonly taxIncluded: boolean;
  /** Whether the car takes loose goods, as with a trailer. */
  readonly carriesBulk: boolean;
  /** What the car carries in one trip; undefined for everything. */
  readonly carPayload: Mass | undefined;
}

export interface BoughtBoards extends Bought {
  readonly yard: string;
}

/** A need that no yard covers, and why. */
export interface NotSold {
  readonly need: Need;
  readonly why: "no price" | "not enough" | "under the least order" | "not brought";
}

/** What is bought where, and what it comes to. */
export interface Basket {
  readonly receipts: readonly YardReceipt[];
  readonly notSold: readonly NotSold[];
  /** Sum of the receipts in whole minor units. */
  readonly cents: number;
}
