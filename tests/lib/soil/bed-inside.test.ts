import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, bedInside, foot, inch, squareInch, times } from "../../../lib/index.ts";
import { bedOf, refusals, wrong } from "./at-hand.ts";

describe("bedInside", () => {
  it("takes two board thicknesses off each way", () => {
    const inside = bedInside(bedOf(96, 48));
    expect(amount(inside.length, inch)).toBeCloseTo(93, 9);
    expect(amount(inside.width, inch)).toBeCloseTo(45, 9);
    expect(amount(inside.area, squareInch)).toBeCloseTo(93 * 45, 6);
    expect(amount(inside.perimeter, inch)).toBeCloseTo(2 * (93 + 45), 8);
  });

  it("gives the outside sizes where the sides have no thickness", () => {
    expect(amount(bedInside(bedOf(96, 48, 0)).length, foot)).toBeCloseTo(8, 12);
  });

  it("does not care which way the bed is turned", () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 400 }), fc.integer({ min: 12, max: 400 }), (a, b) => {
        expect(bedInside(bedOf(a, b)).area.si).toBeCloseTo(bedInside(bedOf(b, a)).area.si, 9);
      }),
    );
  });

  it("refuses what is no bed, naming every field", () => {
    const bed = bedOf(96, 48);
    expect(refusals(() => bedInside(wrong(undefined)))).toContain("missing bed");
    expect(refusals(() => bedInside(wrong({ ...bed, length: undefined })))).toEqual([
      "missing bed.length",
    ]);
    expect(refusals(() => bedInside(wrong({ ...bed, length: 96, width: "4 ft" })))).toEqual([
      "wrong-unit bed.length",
      "unreadable bed.width",
    ]);
    expect(refusals(() => bedInside(wrong({ ...bed, width: times(2, squareInch) })))).toEqual([
      "wrong-unit bed.width",
    ]);
    expect(refusals(() => bedInside(bedOf(-96, 0)))).toEqual([
      "too-small bed.length",
      "too-small bed.width",
    ]);
    expect(refusals(() => bedInside(bedOf(1e7, 48)))).toEqual(["too-large bed.length"]);
    expect(refusals(() => bedInside(bedOf(96, 48, -1)))).toEqual([
      "too-small bed.section.thickness",
    ]);
    expect(refusals(() => bedInside(bedOf(96, 12, 6)))).toEqual([
      "contradiction bed.section.thickness",
    ]);
    expect(refusals(() => bedInside({ ...bed, length: { ...inch, si: Number.NaN } }))).toEqual([
      "unreadable bed.length",
    ]);
  });
});
