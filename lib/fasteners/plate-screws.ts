import { requireRecord } from "../check/index.ts";
import {
  Checks,
  foot,
  inch,
  type Length,
  minus,
  over,
  plus,
  printQuantity,
  times,
} from "../measure/index.ts";
import { requireStock } from "./require-stock.ts";
import type { Screw, ScrewChoice } from "./screw.ts";

/** The screws one can buy, and the wood left before the point. */
export interface PlateScrewsOptions<S extends Screw> {
  /** Screws one can buy. */
  readonly stock: readonly S[];
  /** Wood left before the point. Default: 1/8 in. */
  readonly clearance?: Length;
}

/**
 * The screw that fastens a metal plate to a board: the longest that keeps its point inside.
 *
 * @param joint `plate`: thickness of the plate, 0.5 mm to 1/2 in; `board`: thickness of the board, 1/2 to 12 in
 * @param options `stock`: at least one screw; `clearance`: 0 to 1 in, default 1/8 in
 * @returns the longest screw at most plate + board - clearance (the thickest of equal ones), or none
 * @throws ProblemError where a size is no length or out of its range, or the stock is empty
 * @rule Longest stock screw not over plate thickness + board thickness - 1/8 in.
 * @source common practice
 * @example
 * plateScrews({ plate: times(inch, 0.075), board: times(inch, 1.5) }, { stock: [{ length: inch, diameter: times(inch, 0.164) }, { length: times(inch, 1.5), diameter: times(inch, 0.164) }] }).screw?.length // => 1 in
 */
export function plateScrews<S extends Screw>(
  joint: { readonly plate: Length; readonly board: Length },
  options: PlateScrewsOptions<S>,
): ScrewChoice<S> {
  requireRecord(joint, ["joint"]);
  requireRecord(options, ["options"]);
  const { stock, clearance = over(inch, 8) } = options;
  new Checks()
    .quantity(joint.plate, "length", ["plate"], { min: over(inch, 64), max: over(inch, 2) })
    .quantity(joint.board, "length", ["board"], { min: over(inch, 2), max: foot })
    .quantity(clearance, "length", ["clearance"], { min: times(inch, 0), max: inch })
    .done();
  requireStock(stock);
  const most = minus(plus(joint.plate, joint.board), clearance);
  const screw = longestWithin(stock, most.si);
  return {
    screw,
    most,
    least: null,
    reason:
      screw === null
        ? `Every screw in stock is longer than ${printQuantity(most, { system: "us" })} and would show its point.`
        : `The longest in stock that stays within ${printQuantity(most, { system: "us" })}: plate and board, less the clearance.`,
    offers:
      screw === null ? [{ kind: "shorter-screw", text: "Buy a shorter screw.", size: most }] : [],
  };
}

function longestWithin<S extends Screw>(stock: readonly S[], mostM: number): S | null {
  let best: S | null = null;
  for (const screw of stock) {
    if (screw.length.si > mostM + 1e-9) continue;
    const longer = best === null || screw.length.si > best.length.si + 1e-9;
    const thicker =
      best !== null &&
      Math.abs(screw.length.si - best.length.si) <= 1e-9 &&
      screw.diameter.si > best.diameter.si;
    if (longer || thicker) best = screw;
  }
  return best;
}
