import { describe, expect, it } from "vitest";
import { dressingAdvice, foot, inch, plus, squareFoot, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const inches = (n: number) => times(n, inch);
const advice = {
  use: "for trial",
  depthLow: inches(0.3),
  depthHigh: inches(1.1),
  source: "common practice",
};

describe("dressingAdvice", () => {
  it("is within at both ends, less and more beyond them", () => {
    const fit = (n: number) => dressingAdvice(inches(n), advice).fit;
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
    expect(dressingAdvice(sum, advice).fit).toBe("within");
    expect(dressingAdvice(plus(inches(0.1), inches(0.2)), advice).fit).toBe("within");
  });

  it("says what it is about and what it rests on", () => {
    expect(dressingAdvice(inch, advice)).toMatchObject({
      use: "for trial",
      basis: ["common practice"],
    });
  });

  it("refuses depths and rows that cannot be", () => {
    expect(refusals(() => dressingAdvice(wrong(undefined), advice))).toEqual(["missing depth"]);
    expect(
      refusals(() => dressingAdvice(wrong(2), wrong({ ...advice, depthHigh: squareFoot }))),
    ).toEqual(["wrong-unit depth", "wrong-unit advice.depthHigh"]);
    expect(refusals(() => dressingAdvice(inches(-1), wrong(undefined)))).toEqual([
      "missing advice",
      "too-small depth",
      "missing advice.depthLow",
      "missing advice.depthHigh",
    ]);
    expect(refusals(() => dressingAdvice(times(21, foot), advice))).toEqual(["too-large depth"]);
    expect(refusals(() => dressingAdvice(inch, { ...advice, depthLow: foot }))).toEqual([
      "contradiction advice.depthLow",
    ]);
  });
});
