import { describe, expect, it } from "vitest";
import { cautionsForWall, foot, inch, pound, times, wallHeight } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { expectBecause, expectWhole } from "./caution-cases.ts";

describe("wallHeight", () => {
  it("names the height in both systems, and the permit from 4 ft up", () => {
    const low = wallHeight({ height: times(inch, 30) });
    expectWhole(low, "wall-height");
    expect(low.fact).toContain("2 ft 6 in (762 mm)");
    expect(low.advice).not.toMatch(/permit/);
    expect(wallHeight({ height: times(foot, 4) }).advice).toMatch(/permit.*4 ft/);
    expectBecause(wallHeight);
  });

  it("refuses what is no height", () => {
    expect(refusals(() => wallHeight({ height: wrong(30) }))).toEqual(["wrong-unit height"]);
    expect(refusals(() => wallHeight({ height: wrong(pound) }))).toEqual(["wrong-unit height"]);
    expect(refusals(() => wallHeight({ height: times(foot, 21) }))).toEqual(["too-large height"]);
  });
});

describe("cautionsForWall", () => {
  it("keeps silent up to 24 in of soil", () => {
    expect(cautionsForWall(times(inch, 24))).toEqual([]);
    expect(cautionsForWall(times(inch, 24.0625)).map(({ id }) => id)).toEqual(["wall-height"]);
    expect(cautionsForWall(times(inch, 33), { because: "High bed" })[0]?.because).toBe("High bed");
  });

  it("refuses what is no height", () => {
    expect(refusals(() => cautionsForWall(wrong(undefined)))).toEqual(["missing height"]);
    expect(refusals(() => cautionsForWall(times(inch, 0)))).toEqual(["too-small height"]);
    expect(refusals(() => cautionsForWall(times(inch, -30)))).toEqual(["too-small height"]);
    expect(refusals(() => cautionsForWall(times(foot, 1e9)))).toEqual(["too-large height"]);
  });
});
