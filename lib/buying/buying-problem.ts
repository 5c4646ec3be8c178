import type { Need, PriceLine, YardTerms } from "../cost/index.ts";
import type { BoardProblem } from "../lumber/index.ts";
import type { Density, Mass } from "../measure/index.ts";

/** All that is to be bought, and where and how it can be had. */
export interface BuyingProblem {
  /** Pieces, boards on sale and kept, and how they may be cut. */
  readonly boards: BoardProblem;
  /** Everything else to buy: fill, liner, screws; each is bought at one yard. */
  readonly needs: readonly Need[];
  /** Prices of everything else; lines of boards are not looked at. */
  readonly prices: readonly PriceLine[];
  /** Every yard that boards or prices name. */
  readonly yards: readonly YardTerms[];
  /** ISO 4217 code of all sums. */
  readonly currency: string;
  /** Whether prices have the tax in them. */
  readonly taxIncluded: boolean;
  /** Whether the car takes loose goods. */
  readonly carriesBulk: boolean;
  /** What the car carries in one trip. Default: everything. */
  readonly carPayload?: Mass;
  /** Weight of the boards by volume. Default: they weigh nothing. */
  readonly woodDensity?: Density;
}
