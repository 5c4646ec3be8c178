import { foot, inch, type LinedFrame, times } from "../../../lib/index.ts";

export const inches = (n: number) => times(inch, n);
export const feet = (n: number) => times(foot, n);

/** A frame of 2-by boards by its outside size in feet. */
export const frame = (
  lengthFt: number,
  widthFt: number,
  courses = 1,
  boardIn = 11.25,
): LinedFrame => ({
  length: feet(lengthFt),
  width: feet(widthFt),
  courses,
  section: { thickness: inches(1.5), width: inches(boardIn) },
});

export const roll = (widthFt: number, lengthFt: number) => ({
  width: feet(widthFt),
  length: feet(lengthFt),
});
