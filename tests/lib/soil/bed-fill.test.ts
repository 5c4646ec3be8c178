import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, bedFill, bedVolume, cubicFoot, inch, times } from "../../../lib/index.ts";
import { bedOf, refusals, settling, wrong } from "./at-hand.ts";

const bed = bedOf(96, 48);
const inches = (n: number) => times(n, inch);

describe("bedFill", () => {
  it("takes off what is there and allows for settling", () => {
    const fill = bedFill(bed, settling(0.1, 0.2, 0.5), { depth: inches(9), depthNow: inches(7) });
    const twoInches = amount(bedVolume(bed, inches(2)), cubicFoot);
    expect(amount(fill.missing, inch)).toBeCloseTo(2, 9);
    expect(amount(fill.settled, cubicFoot)).toBeCloseTo(twoInches, 9);
    expect(amount(fill.order.likely, cubicFoot)).toBeCloseTo(twoInches / 0.8, 9);
    expect(amount(fill.order.high, cubicFoot)).toBeCloseTo(twoInches * 2, 9);
    expect(fill.there.si).toBeCloseTo(bedVolume(bed, inches(7)).si, 12);
    expect(fill.surplus.si).toBe(0);
  });

  it("takes a bed without depth now as empty", () => {
    const fill = bedFill(bed, settling(0), { depth: inches(9) });
    expect(fill.there.si).toBe(0);
    expect(fill.order.likely.si).toBeCloseTo(bedVolume(bed, inches(9)).si, 12);
  });

  it("orders nothing for a bed that is full, and says what stands over", () => {
    const fill = bedFill(bed, settling(0.2), { depth: inches(8), depthNow: inches(9) });
    expect(fill.order.high.si).toBe(0);
    expect(fill.surplus.si).toBeCloseTo(bedVolume(bed, inches(1)).si, 12);
  });

  it("fills several beds alike as so many single ones", () => {
    const one = bedFill(bed, settling(0.1), { depth: inches(9) });
    const seven = bedFill(bed, settling(0.1), { depth: inches(9), count: 7 });
    expect(seven.order.likely.si).toBeCloseTo(7 * one.order.likely.si, 9);
    expect(seven.area.si).toBeCloseTo(7 * one.area.si, 9);
  });

  it("never orders less for more settled depth, nor for more settling", () => {
    const depth = fc.double({ min: 0, max: 60, noNaN: true });
    const share = fc.double({ min: 0, max: 0.8, noNaN: true });
    fc.assert(
      fc.property(depth, depth, depth, share, share, (a, b, now, s, t) => {
        const order = (d: number, lost: number) =>
          bedFill(bed, settling(lost), { depth: inches(d), depthNow: inches(now) }).order.likely.si;
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(order(high, s)).toBeGreaterThanOrEqual(order(low, s));
        expect(order(a, Math.max(s, t))).toBeGreaterThanOrEqual(order(a, Math.min(s, t)));
      }),
    );
  });

  it("refuses what cannot be, all of it at once", () => {
    expect(refusals(() => bedFill(bed, settling(0), wrong(undefined)))).toContain(
      "missing options",
    );
    expect(refusals(() => bedFill(bed, settling(0), wrong({})))).toEqual(["missing depth"]);
    expect(
      refusals(() =>
        bedFill(wrong({ ...bed, length: 8 }), settling(0), {
          depth: inches(-1),
          depthNow: inches(500),
          count: 0,
        }),
      ),
    ).toEqual([
      "wrong-unit bed.length",
      "too-small depth",
      "too-large depthNow",
      "too-small count",
    ]);
    const parts = { depth: inches(9), count: 1.5 };
    expect(refusals(() => bedFill(bed, settling(0), parts))).toEqual(["unreadable count"]);
    expect(refusals(() => bedFill(bed, settling(0), { depth: inches(9), count: 1e9 }))).toEqual([
      "too-large count",
    ]);
    expect(refusals(() => bedFill(bed, settling(0.2, 0.1, 0.3), { depth: inches(9) }))).toEqual([
      "contradiction material.settleLikely",
    ]);
  });
});
