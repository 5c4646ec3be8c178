import { Given } from "../measure/given.ts";
import { quantity, type Range, type Volume, volumeDimension } from "../measure/index.ts";
import { volumeLimits } from "./limits.ts";

/** How much of its volume a heap loses until it is finished. */
export interface HeapLoss {
  /** Shares of the raw volume, 0 to 0.95, rising; defaults 0.3, 0.5, 0.6. */
  readonly lossLow?: number;
  readonly lossLikely?: number;
  readonly lossHigh?: number;
}

const loss = { min: 0, max: 0.95 };

/**
 * The finished compost that a raw heap makes. Piles shrink by 30 to 60 per cent, about half as a
 * rule; `low` is the smallest yield.
 *
 * @param raw volume of the heap as piled up, 0 to 1,000,000 m3.
 * @param options shares lost `lossLow`, `lossLikely`, `lossHigh`, 0 to 0.95; defaults 0.3, 0.5, 0.6.
 * @throws ProblemError where the volume or a share is of another kind or out of range, or where the
 * shares do not rise (`contradiction`).
 * @rule finished volume = raw volume x (1 - share lost)
 * @source composting-lab-reduction, soil-facts-1991
 * @example
 * heapYield(times(27, cubicFoot)).likely // => 13.5 cu ft
 */
export function heapYield(raw: Volume, options: HeapLoss = {}): Range<Volume> {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const rawM3 = given.si(raw, "volume", ["raw"], volumeLimits);
  const low = given.plain(chosen.lossLow ?? 0.3, ["lossLow"], loss);
  const likely = given.plain(chosen.lossLikely ?? 0.5, ["lossLikely"], loss);
  const high = given.plain(chosen.lossHigh ?? 0.6, ["lossHigh"], loss);
  if (given.clean && !(low <= likely && likely <= high)) {
    given.add({
      code: "contradiction",
      path: ["lossLikely"],
      allowed: "shares that rise from lossLow over lossLikely to lossHigh",
      received: `${low}, ${likely}, ${high}`,
      remedy: "Put the three shares in order, or leave them out.",
    });
  }
  given.done();
  return {
    low: quantity(rawM3 * (1 - high), volumeDimension),
    likely: quantity(rawM3 * (1 - likely), volumeDimension),
    high: quantity(rawM3 * (1 - low), volumeDimension),
    basis: ["composting-lab-reduction", "soil-facts-1991"],
  };
}
