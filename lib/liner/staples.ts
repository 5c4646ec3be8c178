import { requireRecord } from "../check/index.ts";
import { Checks, foot, inch, type Length, over, times } from "../measure/index.ts";

/** How staples are set. */
export interface StapleOptions {
  /** Distance between staples. Default: 12 in. */
  readonly spacing?: Length;
  /** Rows of them, all above the soil. Default: 1. */
  readonly rows?: number;
}

/**
 * The staples that hold a liner, all above the soil line: below it every staple is a hole, and
 * decay begins at holes.
 *
 * @param perimeter round the inside of the boards, 1 to 1,000 ft
 * @param options `spacing`: 1 to 36 in, default 12 in; `rows`: 1 to 5, default 1
 * @returns the number of staples
 * @throws ProblemError where a value is of the wrong kind or out of its range
 * @rule Perimeter / spacing, rounded up, times the rows.
 * @source common practice
 * @example
 * staples(times(foot, 23)) // => 23
 */
export function staples(perimeter: Length, options: StapleOptions = {}): number {
  requireRecord(options, ["options"]);
  const { spacing = foot, rows = 1 } = options;
  new Checks()
    .quantity(perimeter, "length", ["perimeter"], { min: foot, max: times(foot, 1000) })
    .quantity(spacing, "length", ["spacing"], { min: inch, max: times(foot, 3) })
    .count(rows, ["rows"], { min: 1, max: 5 })
    .done();
  return rows * Math.ceil(over(perimeter, spacing) - 1e-9);
}
