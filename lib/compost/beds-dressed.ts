import { Given } from "../measure/given.ts";
import type { Area, Length, Volume } from "../measure/index.ts";
import { areaLimits, depthLimits, volumeLimits } from "./limits.ts";

/**
 * How many beds of one size a volume of compost dresses to a depth; part of a bed counts as a part.
 *
 * @param compost finished, 0 to 1,000,000 m3.
 * @param area inside the boards of one bed, above 0, to 10,000,000 m2.
 * @param depth of the dressing, above 0, to 20 ft.
 * @throws ProblemError where an argument is missing, of another kind or out of range.
 * @rule beds = compost / (area x depth)
 * @source common practice
 * @example
 * bedsDressed(times(16, cubicFoot), times(32, squareFoot), inch) // => 6
 */
export function bedsDressed(compost: Volume, area: Area, depth: Length): number {
  const given = new Given();
  const m3 = given.si(compost, "volume", ["compost"], volumeLimits);
  const m2 = given.si(area, "area", ["area"], { above: areaLimits.min, max: areaLimits.max });
  const depthM = given.si(depth, "length", ["depth"], {
    above: depthLimits.min,
    max: depthLimits.max,
  });
  given.done();
  return Number((m3 / (m2 * depthM)).toPrecision(12));
}
