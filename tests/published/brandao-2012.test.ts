// Brandão, F., thesis on pattern-based approaches (2012), Table 3.8: real lengths of fiber; for the
// one of 5180 with 198 pieces of 6 lengths the optimum is 33, the relaxation 32.83 (READ).
import { describe, expect, it } from "vitest";
import { published } from "./compare.ts";
import { type CuttingStock, cutExample } from "./cutting-stock.ts";

const fiber06: CuttingStock = {
  stock: [[5180, 1]],
  pieces: [
    [1120, 9],
    [1250, 5],
    [520, 91],
    [1066, 18],
    [1000, 11],
    [1150, 64],
  ],
};

describe("lumber, fiber06 at 5180", () => {
  it("takes 33, and that is proven (READ)", async () => {
    const plan = await cutExample(fiber06);
    published(plan.cost.si, "33");
    expect(plan.boughtCount).toBe(33);
    expect(plan.proof).toEqual({ kind: "optimal" });
  }, 60_000);

  it("has a certificate with a floor of 32.83 (READ)", async () => {
    const { certificate } = await cutExample(fiber06);
    published(certificate.floor.si, "32.83");
  }, 60_000);
});
