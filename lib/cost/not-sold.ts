import type { Need } from "./need.ts";

/** A need that no yard covers, and why. */
export interface NotSold {
  readonly need: Need;
  readonly why: "no price" | "not enough" | "under the least order" | "not brought";
}
