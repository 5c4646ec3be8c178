import type { Area, Length } from "../measure/index.ts";
import { Given } from "./given.ts";
import { areaOf, lengthOf } from "./si.ts";

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
 * amount(bedInside(bed).length, inch) // => 93
 * amount(bedInside(bed).width, inch) // => 45
 */
export function bedInside(bed: BedSides): BedInside {
  const given = new Given();
  const inside = insideM(given, bed, ["bed"]);
  given.done();
  return {
    length: lengthOf(inside.lengthM),
    width: lengthOf(inside.widthM),
    area: areaOf(inside.lengthM * inside.widthM),
    perimeter: lengthOf(2 * (inside.lengthM + inside.widthM)),
  };
}

/** Inside sizes in metres; problems go to `given`. */
export function insideM(
  given: Given,
  bed: BedSides,
  path: readonly (string | number)[],
): { lengthM: number; widthM: number } {
  const sides = given.record(bed, path);
  const section = given.record(sides.section, [...path, "section"]);
  const size = {
    min: 0.1016,
    max: 304.8,
    words: "a length from 4 in to 1000 ft (10.16 cm to 304.8 m)",
  };
  const lengthM = given.length(sides.length, [...path, "length"], size);
  const widthM = given.length(sides.width, [...path, "width"], size);
  const thicknessM = given.length(section.thickness, [...path, "section", "thickness"], {
    min: 0,
    max: 0.3048,
    words: "a board thickness from 0 to 1 ft (30.48 cm)",
  });
  const inside = { lengthM: lengthM - 2 * thicknessM, widthM: widthM - 2 * thicknessM };
  if (given.clean() && Math.min(inside.lengthM, inside.widthM) <= 0) {
    given.refuse({
      code: "contradiction",
      path: [...path, "section", "thickness"],
      allowed: "boards less than half as thick as the bed is wide",
      received: `${thicknessM} m in a bed ${Math.min(lengthM, widthM)} m wide`,
      remedy: "Check the width and the boards' actual thickness, usually 1-1/2 in.",
    });
  }
  return inside;
}
