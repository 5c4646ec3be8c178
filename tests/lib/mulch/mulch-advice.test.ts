import { describe, expect, it } from "vitest";
import { foot, inch, mulchAdvice, plus, squareFoot, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const inches = (n: number) => times(n, inch);
const advice = {
  mulch: "for trial",
  depthLow: inches(0.3),
  depthHigh: inches(1.1),
  source: "common practice",
};

describe("mulchAdvice", () => {
  it("is within at both ends, less and more beyond them", () => {
    const fit = (n: number) => mulchAdvice(inches(n), advice).fit;
    expect([0, 0.29, 0.3, 1, 1.1, 1.11].map(fit)).toEqual([
      "less",
      "less",
      "within",
      "within",
      "within",
      "more",
    ]);
  });

  it("does not take the dust of a sum for more", () => {
    const sum = plus(plus(inches(0.1), inches(0.2)), inches(0.8));
    expect(mulchAdvice(sum, advice).fit).toBe("within");
    expect(mulchAdvice(plus(inches(0.1), inches(0.2)), advice).fit).toBe("within");
  });

  it("says what it is about and what it rests on", () => {
    expect(mulchAdvice(inch, advice)).toMatchObject({
      mulch: "for trial",
      basis: ["common practice"],
    });
  });

  it("refuses depths and rows that cannot be", () => {
    expect(refusals(() => mulchAdvice(wrong(undefined), advice))).toEqual(["missing depth"]);
    expect(
      refusals(() => mulchAdvice(wrong(2), wrong({ ...advice, depthHigh: squareFoot }))),
    ).toEqual(["wrong-unit depth", "wrong-unit advice.depthHigh"]);
    expect(refusals(() => mulchAdvice(inches(-1), wrong(undefined)))).toEqual([
      "missing advice",
      "too-small depth",
      "missing advice.depthLow",
      "missing advice.depthHigh",
    ]);
    expect(refusals(() => mulchAdvice(times(21, foot), advice))).toEqual(["too-large depth"]);
    expect(refusals(() => mulchAdvice(inch, { ...advice, depthLow: foot }))).toEqual([
      "contradiction advice.depthLow",
    ]);
  });
});
