import { Given } from "../measure/given.ts";
import { type Area, areaDimension, type Length, quantity } from "../measure/index.ts";
import { ringLimits } from "./limits.ts";

/** How many stems, and how far the mulch stays from each. */
export interface KeepOffOptions {
  /** How many, 0 to 100,000. */
  readonly stems: number;
  /** Bare ring round each, from its edge, 0 to 10 ft; default 3 in. */
  readonly distance?: Length;
  /** Thickness of a stem, 0 to 10 ft; default none. */
  readonly thickness?: Length;
}

/**
 * The area that stays bare because mulch is kept off stems and trunks, the stems included. Rings
 * are taken not to overlap.
 *
 * @param options `stems`, 0 to 100,000; `distance`, 0 to 10 ft, default 3 in; `thickness` of a stem,
 * 0 to 10 ft, default none.
 * @throws ProblemError naming every field that is missing, of another kind or out of range.
 * @rule bare area = stems x pi x (distance + half the thickness)^2
 * @source wsu-whatcom-compost
 * @example
 * keepOff({ stems: 4, distance: times(3, inch) }) // => 113 sq in
 */
export function keepOff(options: KeepOffOptions): Area {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const stems = given.whole(chosen.stems, ["stems"], { max: 100_000 });
  const ringM =
    chosen.distance === undefined
      ? 0.0762
      : given.si(chosen.distance, "length", ["distance"], ringLimits);
  const stemM =
    chosen.thickness === undefined
      ? 0
      : given.si(chosen.thickness, "length", ["thickness"], ringLimits);
  given.done();
  return quantity(stems * Math.PI * (ringM + stemM / 2) ** 2, areaDimension);
}
