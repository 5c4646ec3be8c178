// Washington State University, Whatcom County Extension, "Using Compost as a Soil Amendment".
import { describe, expect, it } from "vitest";
import {
  amount,
  bagCount,
  cubicFoot,
  cubicYard,
  dressingAdvice,
  gallon,
  inch,
  squareFoot,
  times,
  topDressing,
} from "../../lib/index.ts";
import { published } from "./compare.ts";
import { dataRow } from "./soil-rows.ts";

const bucket = times(5, gallon);

describe("compost, WSU Whatcom County Extension", () => {
  it("100 ft2 to 1 in take 8 ft3 (READ)", () => {
    const dressing = topDressing(times(100, squareFoot), { depth: inch });
    published(amount(dressing.volume, cubicFoot), "8");
  });

  it("1 ft3 is about 1.5 five-gallon buckets (READ)", () => {
    published(amount(cubicFoot, bucket), "1.5");
  });

  it("8 ft3 are 12 buckets (READ)", () => {
    expect(bagCount(times(8, cubicFoot), bucket).bags).toBe(12);
  });

  it("a cubic yard is 27 ft3 (READ)", () => {
    published(amount(cubicYard, cubicFoot), "27");
  });

  it("annuals and perennials take 1 to 2 in, lawn 1/4 in (READ)", () => {
    const judged = (use: string, inches: number) =>
      dressingAdvice(times(inches, inch), dataRow("compostDepths", "use", use)).fit;
    expect([0.9, 1, 2, 2.1].map((n) => judged("annuals and perennials", n))).toEqual([
      "less",
      "within",
      "within",
      "more",
    ]);
    expect([0.2, 0.25, 0.3].map((n) => judged("lawn", n))).toEqual(["less", "within", "more"]);
  });
});
