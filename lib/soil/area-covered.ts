import { Given } from "../measure/given.ts";
import { type Area, areaDimension, type Length, quantity, type Volume } from "../measure/index.ts";
import { someDepth, volumeLimits } from "./limits.ts";

/**
 * The area that a volume covers at a depth.
 *
 * @param volume 0 to 1,000,000 m3.
 * @param depth 1 mm to 20 ft.
 * @throws ProblemError where the volume or depth is missing, of another kind or out of range.
 * @rule area = volume / depth; one cubic yard covers 324 ft2 divided by the depth in inches
 * @source common practice
 * @example
 * areaCovered(times(1, cubicYard), times(2, inch)) // => 162 sq ft
 */
export function areaCovered(volume: Volume, depth: Length): Area {
  const given = new Given();
  const m3 = given.si(volume, "volume", ["volume"], volumeLimits);
  const depthM = given.si(depth, "length", ["depth"], someDepth);
  given.done();
  return quantity(m3 / depthM, areaDimension);
}
