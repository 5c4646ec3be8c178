import { Given } from "../measure/given.ts";
import {
  type Area,
  areaDimension,
  type Length,
  lengthDimension,
  printQuantity,
  quantity,
} from "../measure/index.ts";
import { sideLimits, thicknessLimits } from "./limits.ts";

/**
 * What the soil calculations need to know of a bed: its true outside sizes and how thick its
 * boards are. A frame or a garden's bed has these fields too and can be given as it is.
 */
export interface BedSides {
  /** Outside length, 4 in to 1000 ft. */
  readonly length: Length;
  /** Outside width, 4 in to 1000 ft. */
  readonly width: Length;
  /** Its boards' section, of which only the actual thickness counts here: 0 to 1 ft. */
  readonly section: { readonly thickness: Length };
}

/** The room inside the boards. */
export interface BedInside {
  readonly length: Length;
  readonly width: Length;
  readonly area: Area;
  /** Once round along the inner faces. */
  readonly perimeter: Length;
}

/**
 * The length, width, area and perimeter inside the boards of a bed.
 *
 * @param bed outside length and width, 4 in to 1000 ft, and `section.thickness`, 0 to 1 ft.
 * @throws ProblemError where a size is missing, of another kind or out of range, and where the
 * boards leave nothing between them (`contradiction`).
 * @rule inside = outside - 2 x board thickness, both ways; area = inside length x inside width
 * @source common practice
 * @example
 * const bed = { length: times(8, foot), width: times(4, foot), section: { thickness: times(1.5, inch) } };
 * bedInside(bed).length // => 7 ft 9 in
 * amount(bedInside(bed).width, inch) // => 45
 * bedInside(bed).area // => 29.1 sq ft
 */
export function bedInside(bed: BedSides): BedInside {
  const given = new Given();
  const inside = insideM(given, bed, ["bed"]);
  given.done();
  return {
    length: quantity(inside.lengthM, lengthDimension),
    width: quantity(inside.widthM, lengthDimension),
    area: quantity(inside.lengthM * inside.widthM, areaDimension),
    perimeter: quantity(2 * (inside.lengthM + inside.widthM), lengthDimension),
  };
}

const inWords = (m: number): string => printQuantity(quantity(m, lengthDimension));

/** Inside sizes in metres; problems go to `given`. */
export function insideM(
  given: Given,
  bed: BedSides,
  path: readonly (string | number)[],
): { lengthM: number; widthM: number } {
  const sides = given.fields(bed, path);
  const section = given.fields(sides.section, [...path, "section"]);
  const lengthM = given.si(sides.length, "length", [...path, "length"], sideLimits);
  const widthM = given.si(sides.width, "length", [...path, "width"], sideLimits);
  const place = [...path, "section", "thickness"];
  const thicknessM = given.si(section.thickness, "length", place, thicknessLimits);
  const inside = { lengthM: lengthM - 2 * thicknessM, widthM: widthM - 2 * thicknessM };
  if (given.clean && Math.min(inside.lengthM, inside.widthM) <= 0) {
    given.add({
      code: "contradiction",
      path: place,
      allowed: "boards less than half as thick as the bed is wide",
      received: `${inWords(thicknessM)} in a bed ${inWords(Math.min(lengthM, widthM))} wide`,
      remedy: "Check the width and the boards' actual thickness, usually 1-1/2 in.",
    });
  }
  return inside;
}
