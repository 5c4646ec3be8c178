import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as lib from "../../../lib/index.ts";
import { wide } from "./generators.ts";

const { amount, isQuantity, times } = lib;

// Every unit constant of the library, with its name.
const exported: readonly [string, unknown][] = Object.entries(lib);
const units = exported.flatMap(([name, unit]) => (isQuantity(unit) ? [{ name, unit }] : []));

function isOneKind({ one, other }: { one: lib.Quantity; other: lib.Quantity }): boolean {
  return one.dim.join() === other.dim.join();
}

describe("units", () => {
  it("are all here", () => {
    const names = units.map(({ name }) => name);
    const promised =
      "inch foot yard millimetre centimetre metre squareInch squareFoot squareYard squareMetre " +
      "cubicInch cubicFoot cubicYard cubicMetre litre gallon pound ounce kilogram gram tonne " +
      "shortTon second minute hour day week year poundPerCubicFoot kilogramPerCubicMetre";
    expect(promised.split(" ").filter((name) => !names.includes(name))).toEqual([]);
  });

  it("convert to any other of their kind and back", () => {
    const pairs = units.flatMap(({ unit: one }) =>
      units.map(({ unit: other }) => ({ one, other })).filter(isOneKind),
    );
    expect(pairs.length).toBeGreaterThan(100);
    fc.assert(
      fc.property(fc.constantFrom(...pairs), wide, ({ one, other }, size) => {
        const inOther = amount(times(size, one) as never, other as never);
        const back = amount(times(inOther, other) as never, one as never);
        expect(Math.abs(back / size - 1)).toBeLessThan(1e-14);
      }),
      { numRuns: 2000 },
    );
  });

  // Whole numbers by definition: NIST SP 811, Appendix B (from memory).
  const whole: readonly [lib.Quantity, lib.Quantity, number][] = [
    [lib.foot, lib.inch, 12],
    [lib.yard, lib.foot, 3],
    [lib.mile, lib.foot, 5280],
    [lib.squareFoot, lib.squareInch, 144],
    [lib.squareYard, lib.squareFoot, 9],
    [lib.cubicFoot, lib.cubicInch, 1728],
    [lib.cubicYard, lib.cubicFoot, 27],
    [lib.gallon, lib.cubicInch, 231],
    [lib.gallon, lib.fluidOunce, 128],
    [lib.pound, lib.ounce, 16],
    [lib.shortTon, lib.pound, 2000],
    [lib.cubicMetre, lib.litre, 1000],
    [lib.litre, lib.millilitre, 1000],
    [lib.tonne, lib.kilogram, 1000],
    [lib.week, lib.hour, 168],
    [lib.year, lib.day, 365],
    [lib.poundPerCubicFoot, lib.poundPerCubicYard, 27],
  ];

  it("hold their definitions exactly", () => {
    for (const [large, small, count] of whole) {
      expect(amount(large as never, small as never)).toBe(count);
    }
  });

  it("of area and volume are powers of the lengths'", () => {
    expect(lib.squareInch.si).toBeCloseTo(lib.inch.si ** 2, 15);
    expect(lib.squareFoot.si).toBeCloseTo(lib.foot.si ** 2, 15);
    expect(lib.squareYard.si).toBeCloseTo(lib.yard.si ** 2, 15);
    expect(lib.cubicInch.si).toBeCloseTo(lib.inch.si ** 3, 15);
    expect(lib.cubicFoot.si).toBeCloseTo(lib.foot.si ** 3, 15);
    expect(lib.cubicYard.si).toBeCloseTo(lib.yard.si ** 3, 14);
  });
});
