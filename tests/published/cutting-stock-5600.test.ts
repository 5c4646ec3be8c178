// The worked example of a 5600 mm master roll, in reference pages that agree: 13 widths, 73 rolls,
// 308 patterns, waste 0.401 % (READ).
import { describe, expect, it } from "vitest";
import { published } from "./compare.ts";
import { cutExample } from "./cutting-stock.ts";

const example = {
  stock: [[5600, 1]],
  pieces: [
    [1380, 22],
    [1520, 25],
    [1560, 12],
    [1710, 14],
    [1820, 18],
    [1880, 18],
    [1930, 20],
    [2000, 10],
    [2050, 12],
    [2100, 14],
    [2140, 16],
    [2150, 18],
    [2200, 20],
  ],
} as const;

describe("lumber, the 5600 mm example", () => {
  it("takes 73 rolls, and that is proven (READ)", async () => {
    const plan = await cutExample(example);
    expect(plan.boughtCount).toBe(73);
    expect(plan.proof).toEqual({ kind: "optimal" });
    published(100 * plan.waste, "0.401");
  }, 60_000);
});
