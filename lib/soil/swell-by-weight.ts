import { Given } from "../measure/given.ts";
import type { Density } from "../measure/index.ts";
import { densityLimits } from "./limits.ts";

/** How soil swells and shrinks, from what a volume of it weighs in each state. */
export interface SwellByWeight {
  /** Share by which it grows when dug: 0.25 for a quarter more. */
  readonly swell: number;
  /** Loose weight over weight in place: how much of a loose load was soil in place. */
  readonly loadFactor: number;
  /** Share by which it shrinks from its place to compacted; null where not asked. */
  readonly shrinkage: number | null;
}

/**
 * Swell, load factor and shrinkage of a soil weighed in place, loose and (if known) compacted.
 *
 * @param soil densities `bank`, `loose` and, optional, `compacted`, each 1 to 5000 kg/m3.
 * @throws ProblemError where a density is missing, of another kind or out of range.
 * @rule swell = bank density / loose density - 1; load factor = loose / bank; shrinkage = 1 - bank / compacted
 * @source fm-5-434
 * @example
 * const soil = { bank: times(3000, kilogramPerCubicMetre), loose: times(2400, kilogramPerCubicMetre) };
 * swellByWeight(soil) // => {"swell":0.25,"loadFactor":0.8,"shrinkage":null}
 */
export function swellByWeight(soil: {
  readonly bank: Density;
  readonly loose: Density;
  readonly compacted?: Density;
}): SwellByWeight {
  const given = new Given();
  const row = given.fields(soil, ["soil"]);
  const bank = given.si(row.bank, "density", ["soil", "bank"], densityLimits);
  const loose = given.si(row.loose, "density", ["soil", "loose"], densityLimits);
  const compacted =
    row.compacted === undefined
      ? null
      : given.si(row.compacted, "density", ["soil", "compacted"], densityLimits);
  given.done();
  return {
    swell: bank / loose - 1,
    loadFactor: loose / bank,
    shrinkage: compacted === null ? null : 1 - bank / compacted,
  };
}
