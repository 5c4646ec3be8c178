import { type Problem, ProblemError, requireRecord } from "../check/index.ts";
import {
  Checks,
  foot,
  inch,
  type Length,
  minus,
  over,
  plus,
  printQuantity,
  times,
} from "../measure/index.ts";

/** What the liner needs to know of a frame: a frame of `framePieces` or a bed will do. */
export interface LinedFrame {
  /** True outside length and width. */
  readonly length: Length;
  readonly width: Length;
  /** Boards stacked. */
  readonly courses: number;
  readonly section: { readonly thickness: Length; readonly width: Length };
}

/** How far the sheet is turned and lapped. */
export interface LinerStripOptions {
  /** Sheet turned over the top edge. Default: the thickness of the board, its most. */
  readonly overTop?: Length;
  /** Sheet turned under the lower edge. Default: the thickness of the board, its most. */
  readonly underEdge?: Length;
  /** How far the sheet laps over itself at a join. Default: 12 in; at least 6 in. */
  readonly lap?: Length;
}

/** How strips are cut from a roll. */
export interface LinerCutting extends LinerStripOptions {
  /**
   * Whether strips are cut along the roll wherever it is wide enough, in few pieces, even where
   * short pieces cut across would save a roll. Default: no.
   */
  readonly cutAlong?: boolean;
}

/** The strip of sheet of one frame. */
export interface LinerStrip {
  readonly wallHeight: Length;
  /** Of the sheet: wall, turned over the top, turned under the lower edge. */
  readonly height: Length;
  /** Round the inside of the boards. */
  readonly perimeter: Length;
  /** Of the sheet in one piece: perimeter and one lap. */
  readonly length: Length;
  readonly lap: Length;
}

/**
 * The strip of sheet that lines the soil side of one frame. It is turned over the top edge and
 * under the lower edge, never inward, where a flap would hold water; the outer face stays open to
 * dry, so neither turn is wider than the board is thick.
 *
 * @param frame outside `length` and `width`, 1 to 100 ft; `courses`, 1 to 10; `section`
 * @param options `overTop`, `underEdge`: 0 to the board's thickness, default the thickness;
 *   `lap`: 6 to 48 in, default 12 in
 * @returns heights and lengths of the strip, in one piece
 * @throws ProblemError where a size is of the wrong kind or out of its range
 * @rule Height = wall + turn-over + turn under; length = inside perimeter + one lap a join.
 * @source nrel-sws-2017, common practice
 * @example
 * linerStrip({ length: times(foot, 8), width: times(foot, 4), courses: 1, section: { thickness: times(inch, 1.5), width: times(inch, 11.25) } }).length // => 24 ft
 */
export function linerStrip(frame: LinedFrame, options: LinerStripOptions = {}): LinerStrip {
  requireFrame(frame);
  requireRecord(options, ["options"]);
  const { thickness } = frame.section;
  const { overTop = thickness, underEdge = thickness, lap = foot } = options;
  new Checks()
    .quantity(lap, "length", ["lap"], { min: times(inch, 6), max: times(foot, 4) })
    .done();
  requireTurn(overTop, "overTop", thickness);
  requireTurn(underEdge, "underEdge", thickness);
  const wallHeight = times(frame.section.width, frame.courses);
  const inside = insideOf(frame);
  const perimeter = times(plus(inside.length, inside.width), 2);
  return {
    wallHeight,
    height: plus(plus(wallHeight, overTop), underEdge),
    perimeter,
    length: plus(perimeter, lap),
    lap,
  };
}

/** Length and width inside the boards. */
export function insideOf(frame: LinedFrame): { readonly length: Length; readonly width: Length } {
  const boards = times(frame.section.thickness, 2);
  return { length: minus(frame.length, boards), width: minus(frame.width, boards) };
}

/** Throws unless the frame has sizes that make a bed with something inside. */
export function requireFrame(frame: LinedFrame): void {
  requireRecord(frame, ["frame"]);
  requireRecord(frame.section, ["section"]);
  new Checks()
    .quantity(frame.length, "length", ["length"], { min: foot, max: times(foot, 100) })
    .quantity(frame.width, "length", ["width"], { min: times(inch, 6), max: times(foot, 100) })
    .count(frame.courses, ["courses"], { min: 1, max: 10 })
    .quantity(frame.section.thickness, "length", ["section", "thickness"], {
      min: over(inch, 4),
      max: foot,
    })
    .quantity(frame.section.width, "length", ["section", "width"], {
      min: inch,
      max: times(foot, 2),
    })
    .done();
  const least = Math.min(frame.length.si, frame.width.si);
  if (least > 2 * frame.section.thickness.si) return;
  throw new ProblemError([
    {
      code: "contradiction",
      path: [frame.length.si <= frame.width.si ? "length" : "width"],
      allowed: `more than twice the boards' thickness, ${printQuantity(times(frame.section.thickness, 2))}`,
      received: printQuantity(frame.length.si <= frame.width.si ? frame.length : frame.width),
      remedy: "Make the bed larger or take a thinner section.",
    },
  ]);
}

function requireTurn(turn: Length, name: string, thickness: Length): void {
  new Checks().quantity(turn, "length", [name], { min: times(inch, 0), max: foot }).done();
  if (turn.si <= thickness.si + 1e-9) return;
  const problem: Problem = {
    code: "too-large",
    path: [name],
    allowed: `0 to the board's thickness, ${printQuantity(thickness)}`,
    received: printQuantity(turn),
    remedy: "Trim the sheet: past the board's edge it covers the outer face, which must dry.",
  };
  throw new ProblemError([problem]);
}
