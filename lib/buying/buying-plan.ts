import type { NotSold, YardReceipt } from "../cost/index.ts";
import type { BoardPlan, Certificate } from "../lumber/index.ts";
import type { Money } from "../measure/index.ts";

/** How what is bought at a yard comes to the garden: in the car, or all of it brought. */
export type Way = "fetched" | "delivered";

/** How sure it is that nothing cheaper can be had, by more than one minor unit a yard. */
export type BuyingProof =
  | { readonly kind: "cheapest"; readonly words: string }
  | {
      readonly kind: "within";
      /** "At most $4.10 (0.6 %) above the cheapest possible" */
      readonly words: string;
      readonly above: Money;
      /** The same as a share of the total, 0 to 1. */
      readonly share: number;
    };

/** The floor under every plan that buys at these yards in these ways. */
export interface YardsFloor {
  readonly yards: readonly { readonly yard: string; readonly way: Way }[];
  readonly floor: Money;
  /** Whether the floor alone is above the plan's total, so that nothing there need be looked at. */
  readonly dismissed: boolean;
  /** Null for those dismissed by their floor. */
  readonly certificate: Certificate | null;
}

/** What to buy where, how the boards are cut, and what it comes to. */
export interface BuyingPlan {
  readonly boards: BoardPlan;
  /** One for each yard something is bought at, the boards first. */
  readonly receipts: readonly YardReceipt[];
  readonly ways: readonly { readonly yard: string; readonly way: Way }[];
  readonly notSold: readonly NotSold[];
  /** Sum of the receipts. */
  readonly total: Money;
  readonly proof: BuyingProof;
  readonly floors: readonly YardsFloor[];
}
