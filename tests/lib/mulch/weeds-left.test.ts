import { describe, expect, it } from "vitest";
import { centimetre, inch, times, type WeedCount, weedsLeft } from "../../../lib/index.ts";
import { dataRows } from "../../published/soil-rows.ts";

const counts = dataRows("weedMulch").map((row) => ({
  ...row,
  depth: times(Number(row.depth), centimetre),
})) as unknown as WeedCount[];
const left = (cm: number) => weedsLeft(times(cm, centimetre), counts).left;

describe("weeds through a mulch", () => {
  it("fall by 0.158 in the logarithm for each centimetre (DERIVED, least squares)", () => {
    expect(Math.log(left(11) / left(10))).toBeCloseTo(-0.158, 3);
  });

  it("are near what was counted", () => {
    for (const [cm, counted] of [
      [10, 10.9],
      [20, 2.6],
      [30, 0.5],
    ] as const)
      expect(left(cm) / (counted / 59.4)).toBeCloseTo(1, 0);
  });

  it("are all of them without a mulch, and fewer the deeper it is", () => {
    expect(left(0)).toBe(1);
    const all = [1, 5, 10, 20, 30].map(left);
    expect([...all].sort((a, b) => b - a)).toEqual(all);
  });

  it("says whether so deep a mulch was counted", () => {
    expect(weedsLeft(times(4, inch), counts).counted).toBe(true);
    expect(weedsLeft(times(20, inch), counts).counted).toBe(false);
  });

  it("needs counts at two depths", () => {
    const [first] = counts;
    if (!first) throw new Error("no counts");
    expect(() => weedsLeft(inch, [first, first])).toThrow(/two depths/);
  });
});
