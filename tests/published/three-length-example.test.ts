// The three-length teaching example of classic courses: lengths 9, 6 and 5 at prices 10, 7 and 6.
// Data, optimum (170) and value of the relaxation (170) are from memory, so none of these counts
// among the published checks.
import { describe, expect, it } from "vitest";
import { published } from "./compare.ts";
import { cutExample } from "./cutting-stock.ts";

describe("lumber, three lengths at their prices", () => {
  it("costs 170, proven by the floor alone (from memory)", async () => {
    const plan = await cutExample({
      stock: [
        [9, 10],
        [6, 7],
        [5, 6],
      ],
      pieces: [
        [2, 20],
        [3, 10],
        [4, 20],
      ],
    });
    published(plan.cost.si, "170");
    published(plan.certificate.floor.si, "170");
    expect(plan.proof).toEqual({ kind: "optimal" });
  });
});
