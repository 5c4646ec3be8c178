import { describe, expect, it } from "vitest";
import { amount, foot, inch, keepOff, squareInch, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const inches = (n: number) => times(n, inch);

describe("keepOff", () => {
  it("keeps a disc bare round each stem", () => {
    const one = keepOff({ stems: 1, distance: inches(3), thickness: inches(2) });
    expect(amount(one, squareInch)).toBeCloseTo(Math.PI * 16, 9);
    expect(keepOff({ stems: 5, distance: inches(3), thickness: inches(2) }).si).toBeCloseTo(
      5 * one.si,
      12,
    );
  });

  it("keeps nothing bare for no stems, or no distance, zero being a value and not a blank", () => {
    expect(keepOff({ stems: 0 }).si).toBe(0);
    expect(keepOff({ stems: 4, distance: inches(0) }).si).toBe(0);
  });

  it("refuses what cannot be", () => {
    expect(refusals(() => keepOff(wrong(undefined)))).toContain("missing options");
    expect(refusals(() => keepOff(wrong({})))).toEqual(["missing stems"]);
    expect(refusals(() => keepOff({ stems: 1.5, distance: wrong(3) }))).toEqual([
      "unreadable stems",
      "wrong-unit distance",
    ]);
    expect(refusals(() => keepOff({ stems: -1, thickness: inches(-1) }))).toEqual([
      "too-small stems",
      "too-small thickness",
    ]);
    expect(refusals(() => keepOff({ stems: 1e9, distance: times(11, foot) }))).toEqual([
      "too-large stems",
      "too-large distance",
    ]);
  });
});
