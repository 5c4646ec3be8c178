// Fourer, R.; Gay, D. M.; Kernighan, B. W., the chapter on cutting stock: rolls of 110 in. The data
// were seen in a problem set; the optimum, 47, and the value of the relaxation, 46.25, are from
// memory, so none of these counts among the published checks.
import { describe, expect, it } from "vitest";
import { published } from "./compare.ts";
import { cutExample } from "./cutting-stock.ts";

describe("lumber, rolls of 110 in", () => {
  it("takes 47, proven, above a floor of 46.25 (from memory)", async () => {
    const plan = await cutExample({
      stock: [[110, 1]],
      pieces: [
        [20, 48],
        [45, 35],
        [50, 24],
        [55, 10],
        [75, 8],
      ],
    });
    published(plan.cost.si, "47");
    published(plan.certificate.floor.si, "46.25");
    expect(plan.proof).toEqual({ kind: "optimal" });
  });
});
