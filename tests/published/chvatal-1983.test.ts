// Chvátal, V., Linear Programming (1983), chapter 13: raws of 100 in, four widths. The data were seen
// in an optimisation guide (READ); the optimum, 453 raws, and the value of the relaxation, 452.25,
// are from memory, so none of these counts among the published checks.
import { describe, expect, it } from "vitest";
import { published } from "./compare.ts";
import { cutExample } from "./cutting-stock.ts";

describe("lumber, raws of 100 in", () => {
  it("takes 453, proven, above a floor of 452.25 (from memory)", async () => {
    const plan = await cutExample({
      stock: [[100, 1]],
      pieces: [
        [45, 97],
        [36, 610],
        [31, 395],
        [14, 211],
      ],
    });
    published(plan.cost.si, "453");
    published(plan.certificate.floor.si, "452.25");
    expect(plan.proof).toEqual({ kind: "optimal" });
  });
});
