import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cornerPlates } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

describe("cornerPlates", () => {
  it("is two a corner for each course, and a screw for every hole (common practice)", () => {
    expect(cornerPlates({ courses: 1 })).toEqual({ plates: 8, screws: 64 });
    expect(cornerPlates({ courses: 3 }, { holes: 4 })).toEqual({ plates: 24, screws: 96 });
  });

  it("counts frames as it counts courses", () => {
    const few = fc.integer({ min: 1, max: 10 });
    fc.assert(
      fc.property(few, few, (courses, frames) => {
        const together = cornerPlates({ courses }, { frames }).plates;
        expect(together).toBe(frames * cornerPlates({ courses }).plates);
        expect(together).toBe(cornerPlates({ courses: frames }, { frames: courses }).plates);
      }),
    );
  });

  it("takes no frames as none", () => {
    expect(cornerPlates({ courses: 1 }, { frames: 0 })).toEqual({ plates: 0, screws: 0 });
  });

  it("refuses counts that are none", () => {
    expect(refusals(() => cornerPlates(wrong(undefined)))).toEqual(["missing frame"]);
    expect(refusals(() => cornerPlates({ courses: 1 }, wrong(null)))).toEqual(["missing options"]);
    expect(
      refusals(() =>
        cornerPlates(
          { courses: 0 },
          { frames: -1, perCorner: 1.5, holes: 41, corners: wrong("4") },
        ),
      ),
    ).toEqual([
      "too-small courses",
      "too-small frames",
      "unreadable perCorner",
      "too-large holes",
      "unreadable corners",
    ]);
  });
});
