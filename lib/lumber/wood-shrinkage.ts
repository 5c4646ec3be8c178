import { requireRecord } from "../check/index.ts";
import { Checks, inch, type Length, metre, zeroOf } from "../measure/index.ts";
import { metresToLength } from "./saw-length.ts";
import { FIBRE_SATURATION } from "./wood-density.ts";

/**
 * How much of its green size wood has lost at a moisture content, from its shrinkage to oven-dry.
 *
 * @param total shrinkage from green to oven-dry as a share, 0 to 0.3: `radial`, `tangential` or
 * `volumetric` of a row of `published.shrinkage`
 * @param options `moisture`: water over oven-dry wood, 0 to 3
 * @returns a share of the green size, 0 to `total`
 * @throws ProblemError where a value is missing or out of range
 * @rule Total shrinkage x (0.30 - moisture) / 0.30; none above 30 %.
 * @source gtr-190
 * @example
 * woodShrinkage(0.05, { moisture: 0.15 }) // => 0.025
 */
export function woodShrinkage(total: number, options: { readonly moisture: number }): number {
  requireRecord(options, ["options"]);
  const { moisture } = options;
  new Checks()
    .number(total, ["total"], { min: 0, max: 0.3 })
    .number(moisture, ["moisture"], { min: 0, max: 3 })
    .done();
  return (total * Math.max(0, FIBRE_SATURATION - moisture)) / FIBRE_SATURATION;
}

// Share lost from green (28 %) to a moisture M: a - b M. Not for redwood and cedars, which move less.
const losses = {
  width: { a: 0.06031, b: 0.215 },
  thickness: { a: 0.05062, b: 0.181 },
} as const;

/**
 * What a board's width or thickness becomes when its moisture changes, for lumber of most softwoods.
 * Redwood and cedars move less.
 *
 * @param size measured width or thickness, above 0 and up to 1 m
 * @param options `from` and `to`: water over oven-dry wood, 0.08 to 0.28; `face`: `width` (default)
 * or `thickness`
 * @throws ProblemError where a value is missing or out of range
 * @rule Shrinkage from green to M: width 6.031 - 0.215 M, thickness 5.062 - 0.181 M percent, M in percent; size x (1 - shrinkage at the end) / (1 - shrinkage at the start).
 * @source fpl-rp-489
 * @example
 * sizeAtMoisture(times(11.25, inch), { from: 0.19, to: 0.1 }) // => 11 in
 */
export function sizeAtMoisture(
  size: Length,
  options: { readonly from: number; readonly to: number; readonly face?: "width" | "thickness" },
): Length {
  requireRecord(options, ["options"]);
  const { from, to, face = "width" } = options;
  const moist = { min: 0.08, max: 0.28 };
  new Checks()
    .quantity(size, "length", ["size"], { above: zeroOf(inch), max: metre })
    .number(from, ["from"], moist)
    .number(to, ["to"], moist)
    .choice(face, ["width", "thickness"], ["face"])
    .done();
  const { a, b } = losses[face];
  const left = (moisture: number) => 1 - (a - b * moisture);
  return metresToLength((size.si * left(to)) / left(from));
}
