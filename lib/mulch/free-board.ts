import { Given } from "../measure/given.ts";
import { type Length, lengthDimension, quantity } from "../measure/index.ts";
import { depthLimits } from "./limits.ts";

/** What lies in the bed, from below; each 0 to 20 ft. */
export interface FreeBoardOptions {
  readonly soil: Length;
  /** Compost on the soil; default none. */
  readonly dressing?: Length;
  /** Mulch on top; default none. */
  readonly mulch?: Length;
}

/** How much board stands free above all layers. */
export interface FreeBoard {
  /** Board above the top layer; none where the layers reach the rim or more. */
  readonly free: Length;
  /** How far the layers stand above the rim; none where they fit. */
  readonly over: Length;
  readonly fits: boolean;
}

/**
 * The board that stands free above the soil, the dressing and the mulch, so that water and bark
 * stay in the bed.
 *
 * @param wall height of the boards, 0 to 20 ft.
 * @param options `soil`, and on it `dressing` and `mulch`, default none; each 0 to 20 ft.
 * @throws ProblemError where a depth is missing, of another kind or out of range.
 * @rule free board = wall height - soil - dressing - mulch, not below none
 * @source common practice
 * @example
 * const layers = { soil: times(9.25, inch), mulch: inch };
 * freeBoard(times(11.25, inch), layers).free // => 1 in
 */
export function freeBoard(wall: Length, options: FreeBoardOptions): FreeBoard {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const wallM = given.si(wall, "length", ["wall"], depthLimits);
  const soilM = given.si(chosen.soil, "length", ["soil"], depthLimits);
  const upTo = (key: string): number =>
    given.si(chosen[key] ?? depthLimits.min, "length", [key], depthLimits);
  const layersM = soilM + upTo("dressing") + upTo("mulch");
  given.done();
  const leftM = wallM - layersM;
  // A tenth of a micrometre is the dust of sums of inches.
  const isFlush = Math.abs(leftM) < 1e-7;
  return {
    free: quantity(isFlush ? 0 : Math.max(0, leftM), lengthDimension),
    over: quantity(isFlush ? 0 : Math.max(0, -leftM), lengthDimension),
    fits: isFlush || leftM > 0,
  };
}
