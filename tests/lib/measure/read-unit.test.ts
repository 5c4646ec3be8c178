import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cubicYard,
  dimensionName,
  type foot,
  isQuantity,
  printQuantity,
  readUnit,
  times,
} from "../../../lib/index.ts";

function si(text: string): number | string {
  const reading = readUnit(text);
  if (!reading.ok) return reading.problem.code;
  return isQuantity(reading.value) ? reading.value.si : reading.value;
}

describe("readUnit", () => {
  it("reads the units of headings and data packages", () => {
    expect(si("in")).toBe(0.0254);
    expect(si("cu yd")).toBe(0.764554857984);
    expect(si("ft3")).toBe(0.028316846592);
    expect(si("lb/ft3")).toBeCloseTo(16.018463374, 8);
    expect(si("lb/cu ft")).toBeCloseTo(16.018463374, 8);
    expect(si("lb per cu ft")).toBeCloseTo(16.018463374, 8);
    expect(si("kg/m3")).toBe(1);
    expect(si("%")).toBe(0.01);
    expect(si("1")).toBe(1);
    expect(si("1/yr")).toBeCloseTo(1 / 31_536_000, 18);
    expect(si("g/(m2·d)")).toBeCloseTo(0.001 / 86_400, 18);
    expect(si("lb/1000 ft2")).toBeCloseTo(0.45359237 / 92.90304, 12);
    expect(si("USD/yd3")).toBeCloseTo(1 / 0.764554857984, 12);
  });

  it("keeps the currency", () => {
    const reading = readUnit("EUR/m3");
    expect(reading.ok && isQuantity(reading.value) && reading.value.currency).toBe("EUR");
    expect(reading.ok && isQuantity(reading.value) && dimensionName(reading.value)).toBe(
      "price per volume",
    );
  });

  it("refuses what is no unit", () => {
    expect(si("furlong")).toBe("unreadable");
    expect(si("ft/")).toBe("unreadable");
    expect(si("ft5")).toBe("unreadable");
    expect(si("0")).toBe("unreadable");
    expect(si("bag")).toBe("unreadable");
    expect(si("ft4/ft4")).toBe("unreadable");
    expect(si("")).toBe("missing");
    expect(si(undefined as never)).toBe("missing");
    const reading = readUnit("bags", { path: ["prices", "size"] });
    expect(reading.ok || reading.problem.path).toEqual(["prices", "size"]);
  });

  it("prints in any unit it reads", () => {
    const symbols = fc.constantFrom("in", "yd", "m", "mi", "mm", "feet");
    fc.assert(
      fc.property(symbols, fc.integer({ min: 1, max: 9999 }), (symbol, count) => {
        const reading = readUnit(symbol);
        if (!reading.ok || !isQuantity(reading.value)) throw new Error(symbol);
        const value = times(count, reading.value as typeof foot);
        const text = printQuantity(value, { unit: symbol, grouped: false });
        expect(text).toBe(`${count} ${symbol}`);
      }),
    );
    expect(amount(cubicYard, cubicYard)).toBe(1);
  });
});
