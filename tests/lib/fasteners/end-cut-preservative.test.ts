import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  endCutPreservative,
  fluidOunce,
  gallon,
  inch,
  over,
  squareFoot,
  squareInch,
  times,
} from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { inches } from "./stock.ts";

const section = { thickness: inches(1.5), width: inches(11.25) };

describe("endCutPreservative", () => {
  it("is the area of the ends, coats and coverage", () => {
    // 80 ends of 1-1/2 in x 11-1/4 in: 1,350 in2 = 9.375 ft2; two coats at 100 ft2 a gallon.
    const { area, volume, line } = endCutPreservative([{ section, ends: 80 }]);
    expect(amount(area, squareInch)).toBeCloseTo(1350, 9);
    expect(amount(volume, gallon)).toBeCloseTo(0.1875, 9);
    expect(amount(volume, fluidOunce)).toBeCloseTo(24, 9);
    expect(line).toEqual({ item: "end-cut preservative", need: volume });
  });

  it("is nothing for no ends", () => {
    expect(endCutPreservative([]).volume.si).toBe(0);
    expect(endCutPreservative([{ section, ends: 0 }]).area.si).toBe(0);
  });

  it("adds up over sections in any order, and halves where the label covers twice as much", () => {
    const some = fc.nat({ max: 200 });
    const twice = over(times(squareFoot, 200), gallon);
    fc.assert(
      fc.property(some, some, (a, b) => {
        const small = { thickness: inches(1.5), width: inches(3.5) };
        const sawn = [
          { section, ends: a },
          { section: small, ends: b },
        ];
        const both = endCutPreservative(sawn);
        expect(endCutPreservative(sawn.toReversed()).area.si).toBeCloseTo(both.area.si, 12);
        expect(endCutPreservative(sawn, { coverage: twice }).volume.si).toBeCloseTo(
          both.volume.si / 2,
          12,
        );
      }),
    );
  });

  it("refuses ends and labels that are none", () => {
    expect(refusals(() => endCutPreservative(wrong(undefined)))).toEqual(["missing sawn"]);
    expect(refusals(() => endCutPreservative([wrong(undefined)]))).toEqual(["missing sawn.1"]);
    expect(refusals(() => endCutPreservative([{ section: wrong(undefined), ends: 1 }]))).toEqual([
      "missing sawn.1.section",
    ]);
    expect(
      refusals(() =>
        endCutPreservative([{ section: { thickness: wrong(2), width: inches(-1) }, ends: 1.5 }]),
      ),
    ).toEqual(["wrong-unit sawn.1.thickness", "too-small sawn.1.width", "unreadable sawn.1.ends"]);
    expect(refusals(() => endCutPreservative([], { coats: 0 }))).toEqual(["too-small coats"]);
    expect(refusals(() => endCutPreservative([], { coverage: wrong(100) }))).toEqual([
      "wrong-unit coverage",
    ]);
    expect(refusals(() => endCutPreservative([], { coverage: wrong(inch) }))).toEqual([
      "wrong-unit coverage",
    ]);
    const label = (squareFeet: number) => over(times(squareFoot, squareFeet), gallon);
    expect(refusals(() => endCutPreservative([], { coverage: label(0) }))).toEqual([
      "too-small coverage",
    ]);
    expect(refusals(() => endCutPreservative([], { coverage: label(1e6) }))).toEqual([
      "too-large coverage",
    ]);
  });
});
