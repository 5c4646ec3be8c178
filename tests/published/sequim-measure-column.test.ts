// County Master Gardeners, "Get It Growing: Ready, set, measure!", a garden column.
import { describe, it } from "vitest";
import {
  amount,
  coverVolume,
  cubicFoot,
  foot,
  inch,
  keepOff,
  mulchCover,
  squareFoot,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("soil, garden column on measuring", () => {
  it("100 ft2 to 3 in take 25 ft3 (READ)", () => {
    const area = times(100, squareFoot);
    published(amount(coverVolume(area, times(3, inch)), cubicFoot), "25");
  });
});

describe("mulch, garden column on measuring", () => {
  it("a circle of 10 ft radius has 314 ft2 (READ)", () => {
    published(amount(keepOff({ stems: 1, distance: times(10, foot) }), squareFoot), "314");
  });

  it("25 ft3 of mulch cover 100 ft2 to 3 in (READ)", () => {
    const cover = mulchCover(times(100, squareFoot), { depth: times(3, inch) });
    published(amount(cover.volume, cubicFoot), "25");
  });
});
