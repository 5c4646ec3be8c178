import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardFeet, money } from "../../../lib/index.ts";
import { feet, inches, problemsOf, section } from "./make.ts";

describe("boardFeet", () => {
  it("counts stock under 1 in as 1 in", () => {
    expect(boardFeet(section("3/4x6"), feet(8))).toBe(boardFeet(section("1x6"), feet(8)));
  });

  it("counts a measured section with what it measures", () => {
    expect(boardFeet(section("2 in x 6 in"), feet(12))).toBeCloseTo(12, 9);
  });

  it("adds up over lengths and counts", () => {
    const whole = fc.integer({ min: 1, max: 20 });
    fc.assert(
      fc.property(whole, whole, whole, (a, b, count) => {
        const each = (n: number) => boardFeet(section("2x10"), feet(n), { count });
        expect(each(a) + each(b)).toBeCloseTo(each(a + b), 6);
      }),
    );
  });

  it("is nothing for no boards", () => {
    expect(boardFeet(section("2x12"), feet(8), { count: 0 })).toBe(0);
  });

  it.each([
    ["no section", () => boardFeet(undefined as never, feet(8)), ["missing section"]],
    ["a text", () => boardFeet("2x12" as never, feet(8)), ["unreadable section"]],
    ["no length", () => boardFeet(section("2x12"), undefined as never), ["missing length"]],
    ["a number", () => boardFeet(section("2x12"), 8 as never), ["wrong-unit length"]],
    ["money", () => boardFeet(section("2x12"), money(8) as never), ["wrong-unit length"]],
    ["a zero length", () => boardFeet(section("2x12"), inches(0)), ["too-small length"]],
    ["a negative length", () => boardFeet(section("2x12"), feet(-1)), ["too-small length"]],
    ["an absurd length", () => boardFeet(section("2x12"), feet(1e5)), ["too-large length"]],
    [
      "half a board",
      () => boardFeet(section("2x12"), feet(8), { count: 0.5 }),
      ["unreadable count"],
    ],
    [
      "a negative count",
      () => boardFeet(section("2x12"), feet(8), { count: -1 }),
      ["too-small count"],
    ],
  ])("refuses %s", (_, calculation, problems) => {
    expect(problemsOf(calculation)).toEqual(problems);
  });
});
