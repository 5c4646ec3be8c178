import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bagCount,
  cubicFoot,
  cubicMetre,
  cubicYard,
  foot,
  litre,
  times,
} from "../../../lib/index.ts";
import { refusals, wrong } from "./at-hand.ts";

describe("bagCount", () => {
  it("covers the need with less than a bag to spare", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0.01, max: 0.2, noNaN: true }),
        (needM3, bagM3) => {
          const found = bagCount(times(needM3, cubicMetre), times(bagM3, cubicMetre));
          // A billionth of a bag is left uncovered.
          expect(found.volume.si).toBeGreaterThanOrEqual(needM3 - 1e-9 * bagM3);
          expect(found.volume.si - needM3).toBeLessThan(bagM3);
          expect(found.leftover.si).toBeCloseTo(Math.max(0, found.volume.si - needM3), 9);
        },
      ),
    );
  });

  it("takes no bag more than an exact number of bags", () => {
    for (let bags = 1; bags <= 2000; bags += 1)
      expect(bagCount(times(bags * 0.1, cubicFoot), times(0.1, cubicFoot)).bags).toBe(bags);
    expect(bagCount(times(2, cubicYard), cubicFoot).bags).toBe(54);
  });

  it("takes one bag for a spoonful and none for nothing", () => {
    expect(bagCount(times(0.01, litre), cubicFoot).bags).toBe(1);
    expect(bagCount(times(0, litre), cubicFoot)).toMatchObject({ bags: 0 });
  });

  it("refuses volumes that cannot be", () => {
    expect(refusals(() => bagCount(wrong(undefined), wrong(undefined)))).toEqual([
      "missing volume",
      "missing bag",
    ]);
    expect(refusals(() => bagCount(wrong(3), wrong(foot)))).toEqual([
      "wrong-unit volume",
      "wrong-unit bag",
    ]);
    expect(refusals(() => bagCount(times(-1, litre), times(0, litre)))).toEqual([
      "too-small volume",
      "too-small bag",
    ]);
    expect(refusals(() => bagCount(times(1e7, cubicMetre), times(1e5, cubicMetre)))).toEqual([
      "too-large volume",
      "too-large bag",
    ]);
  });
});
