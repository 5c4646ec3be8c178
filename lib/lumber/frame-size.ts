import { requireRecord } from "../check/index.ts";
import { Checks, foot, inch, type Length, metre, times, zeroOf } from "../measure/index.ts";
import type { FrameSpec } from "./frame-spec.ts";
import { metresToLength } from "./saw-length.ts";

type Outside = Pick<FrameSpec, "length" | "width">;

const noLength: Length = zeroOf(inch);

function checkOutside(outside: Outside): Checks {
  requireRecord(outside, ["frame"]);
  const size = { above: noLength, max: times(100, foot) };
  return new Checks()
    .quantity(outside?.length, "length", ["length"], size)
    .quantity(outside?.width, "length", ["width"], size);
}

/**
 * Length of a frame's diagonal, corner to corner outside: when both measure this, it is square.
 *
 * @param frame outside length and width, above 0 and up to 100 ft
 * @throws ProblemError where a size is missing, no length, or out of range
 * @rule The square root of length squared plus width squared.
 * @source common practice
 * @example
 * frameDiagonal({ length: times(8, foot), width: times(6, foot) }) // => 10 ft
 */
export function frameDiagonal(frame: Outside): Length {
  checkOutside(frame).done();
  return metresToLength(Math.hypot(frame.length.si, frame.width.si));
}

/**
 * Height of a frame's walls.
 *
 * @param frame courses from 1 to 10, and the section, dry or green as it is bought
 * @throws ProblemError where the courses or the section's width are missing or out of range
 * @rule Courses times the board's measured width.
 * @source common practice
 * @example
 * const section = readSection("2x12", { path: ["section"] }).value
 * frameHeight({ courses: 2, section }) // => 1 ft 10 1/2 in
 */
export function frameHeight(frame: Pick<FrameSpec, "courses" | "section">): Length {
  requireRecord(frame, ["frame"]);
  requireRecord(frame.section, ["section"]);
  new Checks()
    .count(frame?.courses, ["courses"], { min: 1, max: 10 })
    .quantity(frame?.section?.width, "length", ["section", "width"], {
      above: noLength,
      max: metre,
    })
    .done();
  return times(frame.courses, frame.section.width);
}
