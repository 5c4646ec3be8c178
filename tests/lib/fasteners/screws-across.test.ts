import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foot, pound, screwsAcross } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { inches } from "./stock.ts";

describe("screwsAcross", () => {
  it("gives a dressed board as many as its nominal width", () => {
    for (const [nominal, dressed] of [
      [4, 3.5],
      [6, 5.5],
      [8, 7.25],
      [10, 9.25],
      [12, 11.25],
    ] as const) {
      expect(screwsAcross(inches(dressed))).toBe(screwsAcross(inches(nominal)));
    }
  });

  it("never grows as a board gets narrower, and counts joints", () => {
    const width = fc.double({ min: 1, max: 12, noNaN: true });
    fc.assert(
      fc.property(width, width, fc.nat({ max: 500 }), (a, b, joints) => {
        const [narrow, wide] = [
          screwsAcross(inches(Math.min(a, b))),
          screwsAcross(inches(Math.max(a, b))),
        ];
        expect(narrow).toBeLessThanOrEqual(wide);
        expect(screwsAcross(inches(a), { joints })).toBe(joints * screwsAcross(inches(a)));
      }),
    );
  });

  it("refuses what is no width", () => {
    expect(refusals(() => screwsAcross(wrong(12)))).toEqual(["wrong-unit width"]);
    expect(refusals(() => screwsAcross(wrong(pound)))).toEqual(["wrong-unit width"]);
    expect(refusals(() => screwsAcross(inches(0)))).toEqual(["too-small width"]);
    expect(refusals(() => screwsAcross(inches(13), { joints: -1 }))).toEqual([
      "too-large width",
      "too-small joints",
    ]);
    expect(refusals(() => screwsAcross(foot, wrong("4")))).toEqual(["unreadable options"]);
  });
});
