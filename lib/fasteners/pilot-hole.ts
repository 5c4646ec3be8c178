import { requireRecord } from "../check/index.ts";
import { Checks, inch, type Length, over, times } from "../measure/index.ts";

/**
 * The lead hole for a wood screw that may be pulled, from the root of its thread.
 *
 * @param root diameter at the root of the thread, 1/32 to 1 in
 * @param options `specificGravity` of the wood, 0.2 to 1.2
 * @returns the diameter of the hole
 * @throws ProblemError where a value is of the wrong kind or out of its range
 * @rule 70 % of the root diameter in softwood, 90 % in dense wood (specific gravity over 0.6).
 * @source nds-commentary-screws
 * @example
 * pilotHole(times(inch, 0.15), { specificGravity: 0.49 }) // => 0.105 in
 */
export function pilotHole(root: Length, options: { readonly specificGravity: number }): Length {
  requireRecord(options, ["options"]);
  new Checks()
    .quantity(root, "length", ["root"], { min: over(inch, 32), max: inch })
    .number(options.specificGravity, ["specificGravity"], { min: 0.2, max: 1.2 })
    .done();
  return times(root, options.specificGravity > 0.6 ? 0.9 : 0.7);
}
