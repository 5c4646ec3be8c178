// Miller and Mann, Oregon State University Extension Service, EM 9308 (2021, revised 2025).
import { describe, expect, it } from "vitest";
import { dressingAdvice, inch, squareFoot, times, topDressing } from "../../lib/index.ts";
import { dataRow } from "./soil-rows.ts";

describe("compost, EM 9308", () => {
  it("dresses existing beds with 1/4 to 1 in each year (READ)", () => {
    const row = dataRow<Parameters<typeof dressingAdvice>[1]>(
      "compostDepths",
      "use",
      "existing bed, on the surface",
    );
    const fits = [0.2, 0.25, 1, 1.25].map((n) => dressingAdvice(times(n, inch), row).fit);
    expect(fits).toEqual(["less", "within", "within", "more"]);
  });

  it("so the caution of overuse begins above 1 in (READ)", () => {
    const cautions = (n: number) =>
      topDressing(squareFoot, { depth: times(n, inch) }).cautions.flatMap(({ sources }) => sources);
    expect(cautions(1)).toEqual([]);
    expect(cautions(1.25)).toContain("osu-em9308");
  });
});
