// University of California, Pest Notes 7441: how deep mulch may lie.
import { describe, expect, it } from "vitest";
import { inch, type MulchDepth, mulchAdvice, times } from "../../lib/index.ts";
import { dataRow } from "./soil-rows.ts";

const judged = (mulch: string, inches: number) =>
  mulchAdvice(times(inches, inch), dataRow<MulchDepth>("mulchDepths", "mulch", mulch)).fit;

describe("mulch, Pest Notes 7441", () => {
  it("coarse mulch lies up to 4 in deep (READ)", () => {
    expect([3, 4, 4.1].map((n) => judged("coarse", n))).toEqual(["within", "within", "more"]);
  });

  it("fine mulch about 2 in only (READ)", () => {
    expect([1, 2, 2.1].map((n) => judged("fine", n))).toEqual(["within", "within", "more"]);
  });
});
