import { Given } from "../measure/given.ts";
import { type Length, quantity, type Volume, volumeDimension } from "../measure/index.ts";
import { type BedSides, insideM } from "./bed-inside.ts";
import { depthLimits } from "./limits.ts";

/**
 * The volume inside the boards of a bed up to a depth: what the soil takes up once it has settled.
 *
 * @param bed outside length and width, 4 in to 1000 ft, and `section.thickness`, 0 to 1 ft.
 * @param depth of the soil, 0 to 20 ft.
 * @throws ProblemError where a size or the depth is missing, of another kind or out of range.
 * @rule volume = inside length x inside width x depth
 * @source common practice
 * @example
 * const bed = { length: times(8, foot), width: times(4, foot), section: { thickness: times(1.5, inch) } };
 * bedVolume(bed, times(11, inch)) // => 26.6 cu ft
 */
export function bedVolume(bed: BedSides, depth: Length): Volume {
  const given = new Given();
  const { lengthM, widthM } = insideM(given, bed, ["bed"]);
  const depthM = given.si(depth, "length", ["depth"], depthLimits);
  given.done();
  return quantity(lengthM * widthM * depthM, volumeDimension);
}
