// Winston, W. L., Operations Research, the section on column generation: boards of 17 ft. The data
// were seen in lecture notes; the value of the relaxation, 55/3 (printed 18.33), is from memory. No
// optimum is known to be printed; above 55/3 it is 19 at least, and 19 is what is found.
import { describe, expect, it } from "vitest";
import { published } from "./compare.ts";
import { cutExample } from "./cutting-stock.ts";

describe("lumber, boards of 17 ft", () => {
  it("has a floor of 55/3 (from memory)", async () => {
    const plan = await cutExample({
      stock: [[17, 1]],
      pieces: [
        [3, 25],
        [5, 20],
        [9, 15],
      ],
    });
    published(plan.certificate.floor.si, "18.33");
    expect(plan.cost.si).toBe(Math.ceil(55 / 3));
    expect(plan.proof).toEqual({ kind: "optimal" });
  });
});
