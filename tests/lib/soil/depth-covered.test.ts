import { describe, expect, it } from "vitest";
import {
  amount,
  bedInside,
  cubicFoot,
  cubicMetre,
  depthCovered,
  foot,
  inch,
  squareFoot,
  squareMetre,
  times,
} from "../../../lib/index.ts";
import { bedOf, refusals, wrong } from "./at-hand.ts";

describe("depthCovered", () => {
  it("finds that four to six bags of 1 ft3 dress a 4 ft x 8 ft bed 1.65 to 2.48 in (common practice)", () => {
    const { area } = bedInside(bedOf(96, 48));
    const depth = (bags: number) => amount(depthCovered(times(bags, cubicFoot), area), inch);
    expect(depth(4)).toBeCloseTo(1.65, 2);
    expect(depth(6)).toBeCloseTo(2.48, 2);
  });

  it("finds 1-1/2 and 2-1/4 in where the outside is reckoned (common practice)", () => {
    const depth = (bags: number) =>
      amount(depthCovered(times(bags, cubicFoot), times(32, squareFoot)), inch);
    expect(depth(4)).toBeCloseTo(1.5, 9);
    expect(depth(6)).toBeCloseTo(2.25, 9);
  });

  it("refuses volumes and areas that cannot be", () => {
    expect(refusals(() => depthCovered(wrong(undefined), wrong(foot)))).toEqual([
      "missing volume",
      "wrong-unit area",
    ]);
    expect(refusals(() => depthCovered(times(-1, cubicMetre), times(0, squareMetre)))).toEqual([
      "too-small volume",
      "too-small area",
    ]);
    expect(refusals(() => depthCovered(cubicMetre, times(1e9, squareMetre)))).toEqual([
      "too-large area",
    ]);
  });
});
