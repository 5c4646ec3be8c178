import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, foot, inch, linerStrip, pound } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { feet, frame, inches } from "./frames.ts";

describe("linerStrip", () => {
  it("goes round the inside with one lap, and over and under the board", () => {
    // Inside 93 in x 45 in: 276 in round, 23 ft; 11-1/4 in of wall and 1-1/2 in at each edge.
    const strip = linerStrip(frame(8, 4));
    expect(amount(strip.perimeter, foot)).toBeCloseTo(23, 12);
    expect(amount(strip.length, foot)).toBeCloseTo(24, 12);
    expect(amount(strip.height, inch)).toBeCloseTo(14.25, 12);
    expect(amount(strip.wallHeight, inch)).toBeCloseTo(11.25, 12);
  });

  it("takes turns of nothing as nothing, and a short lap", () => {
    const none = { overTop: inches(0), underEdge: inches(0), lap: inches(6) };
    const strip = linerStrip(frame(8, 4, 2), none);
    expect(amount(strip.height, inch)).toBeCloseTo(22.5, 12);
    expect(amount(strip.length, foot)).toBeCloseTo(23.5, 12);
  });

  it("is as long turned round, and higher by a board with each course", () => {
    const side = fc.double({ min: 1, max: 100, noNaN: true });
    fc.assert(
      fc.property(side, side, fc.integer({ min: 1, max: 9 }), (a, b, courses) => {
        const strip = linerStrip(frame(a, b, courses));
        expect(linerStrip(frame(b, a, courses)).length.si).toBeCloseTo(strip.length.si, 9);
        const higher = linerStrip(frame(a, b, courses + 1)).height.si - strip.height.si;
        expect(higher).toBeCloseTo(inches(11.25).si, 9);
      }),
    );
  });

  it("refuses a turn past the board's edge: the outer face must dry", () => {
    expect(refusals(() => linerStrip(frame(8, 4), { underEdge: inches(2) }))).toEqual([
      "too-large underEdge",
    ]);
    expect(refusals(() => linerStrip(frame(8, 4), { overTop: inches(1.75) }))).toEqual([
      "too-large overTop",
    ]);
    expect(refusals(() => linerStrip(frame(8, 4), { overTop: inches(-1) }))).toEqual([
      "too-small overTop",
    ]);
  });

  it("refuses laps under 6 in and frames that are none", () => {
    expect(refusals(() => linerStrip(frame(8, 4), { lap: inches(5) }))).toEqual(["too-small lap"]);
    expect(refusals(() => linerStrip(frame(8, 4), { lap: wrong(12) }))).toEqual(["wrong-unit lap"]);
    expect(refusals(() => linerStrip(frame(8, 4), wrong(null)))).toEqual(["missing options"]);
    expect(refusals(() => linerStrip(wrong(undefined)))).toEqual(["missing frame"]);
    expect(refusals(() => linerStrip({ ...frame(8, 4), section: wrong(null) }))).toEqual([
      "missing section",
    ]);
    const bad = {
      length: wrong(8),
      width: wrong(pound),
      courses: 11,
      section: { thickness: inches(0), width: feet(3) },
    };
    expect(refusals(() => linerStrip(bad))).toEqual([
      "wrong-unit length",
      "wrong-unit width",
      "too-large courses",
      "too-small section.thickness",
      "too-large section.width",
    ]);
    const thick = {
      ...frame(8, 4),
      width: inches(8),
      section: { thickness: inches(4), width: inches(8) },
    };
    expect(refusals(() => linerStrip(thick))).toEqual(["contradiction width"]);
  });
});
