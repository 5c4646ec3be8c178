import { describe, expect, it } from "vitest";
import {
  amount,
  foot,
  inch,
  metre,
  newton,
  over,
  penetration,
  poundForce,
  times,
  withdrawal,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

// American Wood Council, Structural Wood Design Solved Example Problems, Example E2.1a: an 8d nail,
// 0.131 in x 2.5 in, in spruce-pine-fir (specific gravity 0.42) through a side plate of 0.105 in.
describe("fasteners, Example E2.1a (READ-2nd)", () => {
  const nail = { fastener: "nail", diameter: times(inch, 0.131) } as const;
  const held = withdrawal({ ...nail, specificGravity: 0.42 });

  it("holds 20.67 lb an inch, 3619.31 N a metre", () => {
    published(over(held, over(poundForce, inch)), "20.67");
    published(over(held, over(newton, metre)), "3619.31", 0.5);
  });

  it("goes 2.395 in into the piece behind, more than enough", () => {
    const found = penetration({ ...nail, length: times(inch, 2.5), through: times(inch, 0.105) });
    published(amount(found.depth, inch), "2.395");
    expect(found.enough).toBe(true);
    expect(found.depth.si).toBeLessThan(foot.si);
  });
});
