import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cubicFoot,
  foot,
  inch,
  mulchCover,
  squareFoot,
  times,
} from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const area = times(48, squareFoot);
const inches = (n: number) => times(n, inch);

describe("mulchCover", () => {
  it("covers the area but for what stays bare", () => {
    const found = mulchCover(area, {
      depth: inches(3),
      bare: times(8, squareFoot),
      bag: times(2, cubicFoot),
    });
    expect(amount(found.area, squareFoot)).toBeCloseTo(40, 9);
    expect(amount(found.volume, cubicFoot)).toBeCloseTo(10, 9);
    expect(found.bags).toBe(5);
    expect(mulchCover(area, { depth: inches(1) }).bags).toBeNull();
  });

  it("needs as much for two areas as for both together, in proportion to depth", () => {
    const ft2 = fc.double({ min: 0, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(ft2, ft2, fc.double({ min: 0, max: 6, noNaN: true }), (a, b, depth) => {
        const volume = (n: number, d: number) =>
          mulchCover(times(n, squareFoot), { depth: inches(d) }).volume.si;
        expect(volume(a, depth) + volume(b, depth)).toBeCloseTo(volume(a + b, depth), 8);
        expect(volume(a, 2 * depth)).toBeCloseTo(2 * volume(a, depth), 8);
      }),
    );
  });

  it("takes bags that cover the need, with less than one to spare", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e3, noNaN: true }), (ft2) => {
        const found = mulchCover(times(ft2, squareFoot), { depth: inches(2), bag: cubicFoot });
        const spare = (found.bags ?? 0) - amount(found.volume, cubicFoot);
        expect(spare).toBeGreaterThan(-1e-6);
        expect(spare).toBeLessThan(1);
      }),
    );
  });

  it("refuses what cannot be, all of it at once", () => {
    expect(refusals(() => mulchCover(wrong(undefined), wrong({})))).toEqual([
      "missing area",
      "missing depth",
    ]);
    expect(
      refusals(() =>
        mulchCover(wrong(foot), wrong({ depth: 3, bare: "none", bag: times(0, cubicFoot) })),
      ),
    ).toEqual(["wrong-unit area", "wrong-unit depth", "unreadable bare", "too-small bag"]);
    expect(refusals(() => mulchCover(times(-1, squareFoot), { depth: inches(-1) }))).toEqual([
      "too-small area",
      "too-small depth",
    ]);
    expect(refusals(() => mulchCover(area, { depth: times(21, foot) }))).toEqual([
      "too-large depth",
    ]);
    expect(
      refusals(() => mulchCover(area, { depth: inches(1), bare: times(49, squareFoot) })),
    ).toEqual(["contradiction bare"]);
  });
});
