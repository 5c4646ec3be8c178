import { describe, expect, it } from "vitest";
import { amount, cubicFoot, gardenTopDressing, inch, times } from "../../../lib/index.ts";
import { bed, material } from "./garden.ts";

const compost = { material: material("compost") };

describe("gardenTopDressing(beds, choices)", () => {
  // Practitioners give a 4 ft x 8 ft bed four to six one-cubic-foot bags: 1.65 to 2.48 in inside the
  // boards (common practice).
  it.each([
    [1.65, 4],
    [2.48, 6],
  ])("%d in in a 4 x 8 bed take %d cu ft", (depth, bags) => {
    const { volume } = gardenTopDressing([bed()], { ...compost, depth: times(depth, inch) });
    expect(amount(volume, cubicFoot)).toBeCloseTo(bags, 1);
  });

  it("takes off what the heap gives, and leaves the rest on it", () => {
    const made = gardenTopDressing([bed()], { ...compost, heap: times(1, cubicFoot) });
    expect(amount(made.toBuy, cubicFoot)).toBeCloseTo((93 * 45) / 1728 - 1, 10);
    expect(made.needs[0]?.volume).toEqual(made.toBuy);
    const rich = gardenTopDressing([bed()], { ...compost, heap: times(10, cubicFoot) });
    expect([rich.toBuy.si, amount(rich.heapLeft, cubicFoot) > 7]).toEqual([0, true]);
  });

  it("takes a depth of nothing for none", () => {
    expect(gardenTopDressing([bed()], { ...compost, depth: times(0, inch) }).volume.si).toBe(0);
  });

  it("carries a caution over 1 in a year", () => {
    const ids = (depth: number) =>
      gardenTopDressing([bed()], { ...compost, depth: times(depth, inch) }).cautions.map(
        ({ id }) => id,
      );
    expect([ids(1), ids(2)]).toEqual([[], ["compost-overuse"]]);
  });
});
