import { requireRecord } from "../check/index.ts";
import { Checks, foot, inch, type Length, over } from "../measure/index.ts";

/** Widths of a board up to which so many fasteners do, in inches, from the crate rule. */
const steps: readonly (readonly [widthIn: number, fasteners: number])[] = [
  [4, 2],
  [6, 3],
  [8, 4],
  [12, 5],
];

/**
 * How many screws hold one board at one stake or corner, by the board's width.
 *
 * @param width of the board, nominal or dressed, 1 to 12 in
 * @param options `joints`: how many such places, 0 to 100,000; default 1
 * @returns the number of screws in all
 * @throws ProblemError where the width is no length from 1 to 12 in, or `joints` no whole number
 * @rule Two up to 4 in of width, three up to 6 in, four up to 8 in, five up to 12 in; times the joints.
 * @source mil-dtl-45449
 * @example
 * screwsAcross(times(inch, 11.25), { joints: 4 }) // => 20
 */
export function screwsAcross(width: Length, options: { readonly joints?: number } = {}): number {
  requireRecord(options, ["options"]);
  const { joints = 1 } = options;
  new Checks()
    .quantity(width, "length", ["width"], { min: inch, max: foot })
    .count(joints, ["joints"], { min: 0, max: 100_000 })
    .done();
  const widthIn = over(width, inch);
  const step = steps.find(([upTo]) => widthIn <= upTo + 1e-9);
  return joints * (step?.[1] ?? 5);
}
