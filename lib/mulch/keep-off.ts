import type { Area, Length } from "../measure/index.ts";
import { Given } from "../soil/given.ts";
import { areaOf } from "../soil/si.ts";

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
 * amount(keepOff({ stems: 4 }), squareInch).toFixed(1) // => "113.1"
 */
export function keepOff(options: KeepOffOptions): Area {
  const given = new Given();
  const chosen = given.record(options, ["options"]);
  const size = { min: 0, max: 3.048, words: "a length from 0 to 10 ft (3.048 m)" };
  const stems = given.count(chosen.stems, ["stems"], {
    min: 0,
    max: 100_000,
    words: "a whole number from 0 to 100,000",
  });
  const ringM =
    chosen.distance === undefined ? 0.0762 : given.length(chosen.distance, ["distance"], size);
  const stemM =
    chosen.thickness === undefined ? 0 : given.length(chosen.thickness, ["thickness"], size);
  given.done();
  return areaOf(stems * Math.PI * (ringM + stemM / 2) ** 2);
}
