import { describe, expect, it } from "vitest";
import { compostSalts } from "../../../lib/index.ts";

describe("salts in compost", () => {
  // University of Missouri Soil and Plant Testing Laboratory, compost Table 1 (READ).
  it.each([
    ["paste", 4],
    ["1:1", 2.5],
    ["1:2", 1.5],
  ] as const)("%s: wanted below %d mmhos/cm (READ)", (extract, wanted) => {
    expect(compostSalts(wanted, extract)).toMatchObject({ fit: "salty", wanted });
    expect(compostSalts(wanted - 0.1, extract).fit).toBe("fits");
  });
});
