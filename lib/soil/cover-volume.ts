import { Given } from "../measure/given.ts";
import {
  type Area,
  type Length,
  quantity,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import { areaLimits, depthLimits } from "./limits.ts";

/**
 * The volume that covers an area to a depth.
 *
 * @param area 0 to 10,000,000 m2.
 * @param depth 0 to 20 ft.
 * @throws ProblemError where the area or depth is missing, of another kind or out of range.
 * @rule volume = area x depth
 * @source common practice
 * @example
 * coverVolume(times(100, squareFoot), times(3, inch)) // => 25 cu ft
 */
export function coverVolume(area: Area, depth: Length): Volume {
  const given = new Given();
  const areaM2 = given.si(area, "area", ["area"], areaLimits);
  const depthM = given.si(depth, "length", ["depth"], depthLimits);
  given.done();
  return quantity(areaM2 * depthM, volumeDimension);
}
