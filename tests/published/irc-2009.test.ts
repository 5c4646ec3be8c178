// International Code Council, International Residential Code, 2009: R105.2 item 3 and R404.4, with
// their metric values, as quoted by building departments.
import { describe, expect, it } from "vitest";
import {
  amount,
  cautionsForWall,
  DESIGNED_WALL_HEIGHT,
  foot,
  inch,
  millimetre,
  PERMIT_WALL_HEIGHT,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("measure, IRC 2009", () => {
  it("R105.2: a wall of 4 ft is 1,219 mm (READ-2nd)", () => {
    published(amount(times(4, foot), millimetre), "1,219");
  });

  it("R404.4: fill of 24 in is 610 mm (READ-2nd)", () => {
    published(amount(times(24, inch), millimetre), "610");
  });
});

describe("safety, IRC 2009", () => {
  it("R404.4: more than 24 in of unbalanced fill is to be designed (READ-2nd)", () => {
    published(amount(DESIGNED_WALL_HEIGHT, inch), "24");
    expect(cautionsForWall(times(24, inch))).toEqual([]);
    expect(cautionsForWall(times(25, inch))).toHaveLength(1);
  });

  it("R105.2: no permit up to 4 ft from the bottom of the footing (READ-2nd)", () => {
    published(amount(PERMIT_WALL_HEIGHT, foot), "4");
  });
});
