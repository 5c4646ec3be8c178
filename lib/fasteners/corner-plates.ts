import { requireRecord } from "../check/index.ts";
import { Checks } from "../measure/index.ts";

/** How many frames, and what the plates are like. */
export interface CornerPlatesOptions {
  /** How many such frames. Default: 1. */
  readonly frames?: number;
  /** Plates at each corner of each course. Default: 2, one near the top and one near the bottom. */
  readonly perCorner?: number;
  /** Screw holes in a plate, all filled. Default: 8; plates differ, count yours. */
  readonly holes?: number;
  /** Corners of a frame. Default: 4. */
  readonly corners?: number;
}

/** Corner plates and their screws. */
export interface CornerPlates {
  readonly plates: number;
  /** One for each hole of each plate. */
  readonly screws: number;
}

/**
 * The corner plates and their screws for frames of so many courses.
 *
 * @param frame `courses`: boards stacked, 1 to 10
 * @param options how many frames (0 to 10,000), plates a corner (1 to 10), holes (1 to 40), corners (3 to 12)
 * @returns the number of plates and of screws
 * @throws ProblemError where a count is not whole or out of its range
 * @rule Plates = frames x corners x courses x plates a corner; a screw for every hole.
 * @source common practice
 * @example
 * cornerPlates({ courses: 2 }, { frames: 3 }).plates // => 48
 */
export function cornerPlates(
  frame: { readonly courses: number },
  options: CornerPlatesOptions = {},
): CornerPlates {
  requireRecord(frame, ["frame"]);
  requireRecord(options, ["options"]);
  const { frames = 1, perCorner = 2, holes = 8, corners = 4 } = options;
  new Checks()
    .count(frame.courses, ["courses"], { min: 1, max: 10 })
    .count(frames, ["frames"], { min: 0, max: 10_000 })
    .count(perCorner, ["perCorner"], { min: 1, max: 10 })
    .count(holes, ["holes"], { min: 1, max: 40 })
    .count(corners, ["corners"], { min: 3, max: 12 })
    .done();
  const plates = frames * corners * frame.courses * perCorner;
  return { plates, screws: plates * holes };
}
