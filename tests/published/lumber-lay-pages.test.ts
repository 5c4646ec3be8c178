// Lay reference pages on lumber, several that agree, seen but not named: metric sizes, board feet,
// and the widths some of them print wrongly.
import { describe, expect, it } from "vitest";
import { amount, boardFeet, inch, millimetre } from "../../lib/index.ts";
import { feet, section } from "../lib/lumber/make.ts";
import { published } from "./compare.ts";
import { knownDifference } from "./known-difference.ts";

describe("lumber, metric sizes of nominal sections", () => {
  it.each([
    ["2x12", "38", "286"],
    ["4x4", "89", "89"],
    ["4x6", "89", "140"],
    ["1x3", "19", "64"],
    ["1x4", "19", "89"],
    ["1x6", "19", "140"],
    ["1x8", "19", "184"],
    ["5/4x6", "25", "140"],
  ])("%s: %s x %s mm (READ)", (name, thickness, width) => {
    published(amount(section(name).thickness, millimetre), thickness);
    published(amount(section(name).width, millimetre), width);
  });
});

describe("lumber, board feet", () => {
  it("2x4, 10 ft: 6.667 (READ)", () => {
    published(boardFeet(section("2x4"), feet(10)), "6.667");
  });

  it("2x4: 0.667 a foot (READ)", () => {
    published(boardFeet(section("2x4"), feet(1)), "0.667");
  });

  it("1x4, 6 ft: 2 (READ)", () => {
    expect(boardFeet(section("1x4"), feet(6))).toBeCloseTo(2, 9);
  });
});

describe("lumber, sizes printed wrongly", () => {
  it.each(["1x6", "2x6"])("%s is not 5.25 in wide (READ)", (name) => {
    const reason = "some lay tables print 5-1/4 in; the standard has 5-1/2 in";
    knownDifference(amount(section(name).width, inch), "5.25", reason);
  });
});
