import type { Area, Length, Volume } from "../measure/index.ts";
import { Given } from "./given.ts";
import { areaLimits, depthLimits } from "./limits.ts";
import { volumeOf } from "./si.ts";

/**
 * The volume that covers an area to a depth.
 *
 * @param area 0 to 10,000,000 m2.
 * @param depth 0 to 20 ft.
 * @throws ProblemError where the area or depth is missing, of another kind or out of range.
 * @rule volume = area x depth
 * @source common practice
 * @example
 * coverVolume(times(100, squareFoot), times(3, inch)) // => 25 ft³
 */
export function coverVolume(area: Area, depth: Length): Volume {
  const given = new Given();
  const areaM2 = given.area(area, ["area"], areaLimits);
  const depthM = given.length(depth, ["depth"], depthLimits);
  given.done();
  return volumeOf(areaM2 * depthM);
}
