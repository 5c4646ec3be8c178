import type { FrameSpec } from "../lumber/index.ts";
import type { CalendarDate, Length } from "../measure/index.ts";

/** A bed, complete: everything that was left open has its value, and what was assumed is said. */
export interface Bed extends FrameSpec {
  /** Courses x width of a board. */
  readonly wallHeight: Length;
  readonly liner: boolean;
  /** Settled depth wanted, and there now. */
  readonly soilDepth: Length;
  readonly depthNow: Length;
  readonly built: CalendarDate | undefined;
  /** Where it stands on the plan; undefined where nobody said. */
  readonly place: BedPlace | undefined;
  /** What was assumed of it, a sentence each. */
  readonly assumed: readonly string[];
  /** Row of the table it stands in. */
  readonly row: number | undefined;
}

/** Where a bed stands on the plan. */
export interface BedPlace {
  /** Near-left corner. */
  readonly east: Length;
  readonly north: Length;
  /** Whether its length runs north. */
  readonly turned: boolean;
}
