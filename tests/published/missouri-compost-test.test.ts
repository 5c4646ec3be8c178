import { describe, expect, it } from "vitest";
import { compostSalts } from "../../lib/index.ts";
import { published } from "./compare.ts";

// University of Missouri, Soil and Plant Testing Laboratory, compost Table 1.
describe("compost, conductivity by extract", () => {
  it.each([
    ["paste", "4.0"],
    ["1:1", "2.5"],
    ["1:2", "1.5"],
  ] as const)("of %s is wanted below %s mmhos/cm (READ)", (extract, limit) => {
    published(compostSalts(1, extract).wanted, limit);
    expect(compostSalts(Number(limit), extract).fit).toBe("salty");
    expect(compostSalts(Number(limit) - 0.01, extract).fit).toBe("fits");
  });
});
