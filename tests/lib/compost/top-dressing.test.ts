import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cubicFoot,
  foot,
  inch,
  squareFoot,
  times,
  topDressing,
} from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const area = times(120, squareFoot);
const inches = (n: number) => times(n, inch);
const feet3 = (n: number) => times(n, cubicFoot);

describe("topDressing", () => {
  it("takes the heap's compost off and counts bags for the rest", () => {
    const found = topDressing(area, { depth: inches(1), onHand: feet3(3.5), bag: feet3(1) });
    expect(amount(found.volume, cubicFoot)).toBeCloseTo(10, 9);
    expect(amount(found.toBuy, cubicFoot)).toBeCloseTo(6.5, 9);
    expect(found.bags).toBe(7);
    expect(found.heapLeft.si).toBe(0);
  });

  it("counts no bags where none are named", () => {
    expect(topDressing(area, { depth: inches(1) }).bags).toBeNull();
  });

  it("never buys a negative volume; need, heap and rest add up", () => {
    const some = fc.double({ min: 0, max: 500, noNaN: true });
    fc.assert(
      fc.property(some, fc.double({ min: 0, max: 12, noNaN: true }), some, (ft2, depth, heap) => {
        const found = topDressing(times(ft2, squareFoot), {
          depth: inches(depth),
          onHand: feet3(heap),
          bag: feet3(1),
        });
        expect(found.toBuy.si).toBeGreaterThanOrEqual(0);
        expect(found.heapLeft.si).toBeGreaterThanOrEqual(0);
        expect(found.fromHeap.si + found.toBuy.si).toBeCloseTo(found.volume.si, 9);
        expect(found.fromHeap.si + found.heapLeft.si).toBeCloseTo(feet3(heap).si, 9);
      }),
    );
  });

  it("carries a caution above 1 in a year, and none at 1 in", () => {
    const ids = (n: number) => topDressing(area, { depth: inches(n) }).cautions.map(({ id }) => id);
    expect(ids(1)).toEqual([]);
    expect(ids(1.1)).toEqual(["compost-overuse"]);
  });

  it("refuses what cannot be, all of it at once", () => {
    expect(refusals(() => topDressing(wrong(undefined), wrong({})))).toEqual([
      "missing area",
      "missing depth",
    ]);
    expect(refusals(() => topDressing(area, wrong(undefined)))).toContain("missing options");
    expect(
      refusals(() =>
        topDressing(times(-1, squareFoot), {
          depth: inches(-1),
          onHand: feet3(-1),
          bag: feet3(0),
        }),
      ),
    ).toEqual(["too-small area", "too-small depth", "too-small onHand", "too-small bag"]);
    expect(
      refusals(() => topDressing(wrong(foot), wrong({ depth: 1, onHand: 4, bag: "1 ft3" }))),
    ).toEqual(["wrong-unit area", "wrong-unit depth", "wrong-unit onHand", "unreadable bag"]);
    expect(refusals(() => topDressing(area, { depth: times(30, foot) }))).toEqual([
      "too-large depth",
    ]);
  });
});
