import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, bedInside, cubicFoot, digOut, dugSoil, inch, times } from "../../../lib/index.ts";

const bed = {
  length: times(99, inch),
  width: times(51, inch),
  section: { thickness: times(1.5, inch) },
};
const earth = { soil: "common earth", bankToLoose: 1.25, bankToCompacted: 0.9 };
const inches = (n: number) => times(n, inch);
// 96 in by 48 in inside: 32 sq ft.
const dig = (options: Partial<Parameters<typeof digOut>[2]>) =>
  digOut(bed, earth, { depthNow: inches(9), ...options });
const feet3 = (volume: Parameters<typeof amount>[0]) => amount(volume, cubicFoot);

describe("soil dug out", () => {
  it("all of it is what dugSoil says", () => {
    const all = dig({});
    const { inPlace, loose } = dugSoil(bed, earth, { depth: inches(9) });
    expect([all.inPlace, all.loose]).toEqual([inPlace, loose]);
    expect(all.whole).toBe(true);
  });

  it("a trench of 12 in all round leaves 72 in by 24 in: corners count once", () => {
    const { inPlace, stays } = dig({ trench: {} });
    expect(feet3(stays)).toBeCloseTo((6 * 2 * 9) / 12, 9);
    expect(feet3(inPlace)).toBeCloseTo(((32 - 12) * 9) / 12, 9);
  });

  it("along one side only, or the ends only, it is that strip", () => {
    expect(feet3(dig({ trench: { sides: 1, ends: 0 } }).inPlace)).toBeCloseTo(6, 9);
    expect(feet3(dig({ trench: { sides: 0, ends: 2 } }).inPlace)).toBeCloseTo(6, 9);
    expect(feet3(dig({ trench: { sides: 0, ends: 0 } }).inPlace)).toBe(0);
  });

  it("trenches that meet are the whole bed", () => {
    const wide = dig({ trench: { width: inches(30) } });
    expect(wide.whole).toBe(true);
    expect(feet3(wide.inPlace)).toBeCloseTo(24, 9);
  });

  it("what stays, goes back and is lost is what was there; missing is what is wanted beyond", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const depth = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(depth, depth, share, fc.boolean(), (now, wanted, lost, isTrench) => {
        const found = dig({
          depthNow: inches(now),
          wanted: inches(wanted),
          lost,
          ...(isTrench ? { trench: {} } : {}),
        });
        const { area } = bedInside(bed);
        expect(found.stays.si + found.inPlace.si).toBeCloseTo(area.si * inches(now).si, 9);
        expect(found.back.si).toBeCloseTo(found.inPlace.si * (1 - lost), 9);
        const there = found.stays.si + found.back.si;
        expect(found.missing.si).toBeCloseTo(Math.max(0, area.si * inches(wanted).si - there), 9);
        expect(found.missingDepth.si * area.si).toBeCloseTo(found.missing.si, 9);
      }),
    );
  });

  it("is so many times as much for so many beds, of which a fiftieth is lost unless said", () => {
    const [one, seven] = [dig({}), dig({ count: 7 })];
    for (const key of ["inPlace", "loose", "stays", "back", "missing"] as const)
      expect(seven[key].si).toBeCloseTo(7 * one[key].si, 12);
    expect(seven.missingDepth.si).toBeCloseTo(one.missingDepth.si, 12);
    expect(one.back.si / one.inPlace.si).toBeCloseTo(0.98, 12);
  });

  it("a trench loses less than all of it, and carries the caution for old soil", () => {
    expect(dig({ trench: {} }).missing.si).toBeLessThan(dig({}).missing.si);
    expect(dig({}).cautions.map(({ id }) => id)).toEqual(["lead-in-old-soil"]);
    expect(dig({ depthNow: inches(0) }).cautions).toEqual([]);
  });
});
