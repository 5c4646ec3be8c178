import { Given } from "../measure/given.ts";
import {
  type Area,
  type Length,
  lengthDimension,
  quantity,
  type Volume,
} from "../measure/index.ts";
import { someArea, volumeLimits } from "./limits.ts";

/**
 * The depth to which a volume lies when spread over an area.
 *
 * @param volume 0 to 1,000,000 m3.
 * @param area 1 cm2 to 10,000,000 m2.
 * @throws ProblemError where the volume or area is missing, of another kind or out of range.
 * @rule depth = volume / area
 * @source common practice
 * @example
 * depthCovered(times(1, cubicYard), times(162, squareFoot)) // => 2 in
 */
export function depthCovered(volume: Volume, area: Area): Length {
  const given = new Given();
  const m3 = given.si(volume, "volume", ["volume"], volumeLimits);
  const areaM2 = given.si(area, "area", ["area"], someArea);
  given.done();
  return quantity(m3 / areaM2, lengthDimension);
}
