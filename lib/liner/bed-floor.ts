import { requireRecord } from "../check/index.ts";
import {
  type Area,
  Checks,
  foot,
  inch,
  type Length,
  minus,
  over,
  printQuantity,
  times,
} from "../measure/index.ts";
import { insideOf, type LinedFrame, requireFrame } from "./liner-strip.ts";

/** What lies under the soil: nothing, a sheet with holes, or wire mesh against burrowers. */
export type FloorKind = "open" | "sheet" | "mesh";

/** What lies on a floor and how it is sold. */
export interface BedFloorOptions {
  readonly kind: FloorKind;
  /** How it is sold. */
  readonly roll: { readonly width: Length; readonly length: Length };
  /** Lap where two strips meet. Default: 6 in. */
  readonly lap?: Length;
}

/** What covers the floor of one bed. */
export interface BedFloor {
  /** Inside the boards; zero for an open floor. */
  readonly area: Area;
  /** Strips laid side by side. */
  readonly strips: number;
  /** Length off the roll, of all strips. */
  readonly rollLength: Length;
}

/**
 * What covers the floor of one bed, where something is asked for: strips the length or the width
 * of the bed, whichever takes less of the roll.
 *
 * @param frame a frame or bed
 * @param options `kind`: `open`, `sheet` or `mesh`; `roll`: width 6 in to 40 ft, length 3 to 1,000 ft;
 *   `lap`: 0 to 24 in, default 6 in
 * @returns area, strips and the length off the roll; zeros for an open floor
 * @throws ProblemError where a value is of the wrong kind or out of its range
 * @rule Area inside the boards; strips of roll width less a lap, until the floor is covered.
 * @source common practice
 * @example
 * bedFloor({ length: times(foot, 8), width: times(foot, 4), courses: 1, section: { thickness: times(inch, 1.5), width: times(inch, 11.25) } }, { kind: "mesh", roll: { width: times(foot, 4), length: times(foot, 25) } }).strips // => 1
 */
export function bedFloor(frame: LinedFrame, options: BedFloorOptions): BedFloor {
  requireRecord(options, ["options"]);
  const { kind, roll, lap = times(inch, 6) } = options;
  requireFrame(frame);
  new Checks().choice(kind, ["open", "sheet", "mesh"], ["kind"]).done();
  if (kind === "open")
    return { area: times(times(foot, foot), 0), strips: 0, rollLength: times(foot, 0) };
  requireRecord(roll, ["roll"]);
  new Checks()
    .quantity(roll.width, "length", ["roll", "width"], {
      min: times(inch, 6),
      max: times(foot, 40),
    })
    .quantity(roll.length, "length", ["roll", "length"], {
      min: times(foot, 3),
      max: times(foot, 1000),
    })
    .quantity(lap, "length", ["lap"], { min: times(inch, 0), max: times(inch, 24) })
    .done();
  requireLapUnder(roll.width, lap);
  const inside = insideOf(frame);
  const cover = (side: Length, run: Length) => {
    const strips =
      roll.width.si >= side.si - 1e-9
        ? 1
        : Math.ceil(over(minus(side, lap), minus(roll.width, lap)) - 1e-9);
    return { strips, rollLength: times(run, strips) };
  };
  const longways = cover(inside.width, inside.length);
  const crossways = cover(inside.length, inside.width);
  const less = longways.rollLength.si <= crossways.rollLength.si + 1e-9 ? longways : crossways;
  return { area: times(inside.length, inside.width), ...less };
}

/** A strip no wider than its lap would never cover a floor. */
function requireLapUnder(width: Length, lap: Length): void {
  const holds = lap.si < width.si - 1e-9;
  new Checks()
    .unless(holds, {
      code: "contradiction",
      path: ["lap"],
      allowed: `less than the roll's width, ${printQuantity(width)}`,
      received: printQuantity(lap),
      remedy: "Take a smaller lap or a wider roll.",
    })
    .done();
}
