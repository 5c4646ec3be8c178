import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  absolute,
  foot,
  inch,
  metre,
  negative,
  over,
  plus,
  power,
  printQuantity,
  same,
  times,
} from "../../../lib/index.ts";
import { codesOf, wide } from "./generators.ts";

describe("power", () => {
  it("raises quantities to whole powers", () => {
    expect(printQuantity(power(times(2, foot), 3))).toBe("8 cu ft");
    expect(power(times(2, foot), 0)).toBe(1);
    expect(same(power(foot, 1), foot)).toBe(true);
    expect(same(times(power(foot, -2), power(foot, 3)), foot)).toBe(true);
  });

  it("raises numbers to any", () => {
    expect(power(2, 0.5)).toBe(Math.SQRT2);
    expect(power(0, 0)).toBe(1);
  });

  it("is repeated multiplication", () => {
    fc.assert(
      fc.property(wide, (side) => {
        const length = times(side, metre);
        expect(same(power(length, 2), times(length, length))).toBe(true);
      }),
    );
  });

  it("refuses fractions of a dimension, the fifth power, nothing, and no finite result", () => {
    expect(codesOf(() => power(foot, 0.5))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => power(foot, 5))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => power(power(foot, 2), 3))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => power(undefined as never, 2))).toEqual(["missing at "]);
    expect(codesOf(() => power(0, -1))).toEqual(["unreadable at "]);
    expect(codesOf(() => power(-8, 1 / 3))).toEqual(["unreadable at "]);
  });
});

describe("negative and absolute", () => {
  it("turn and drop the sign", () => {
    expect(printQuantity(negative(times(2, inch)))).toBe("-2 in");
    expect(printQuantity(absolute(times(-2, inch)))).toBe("2 in");
    expect(absolute(-3)).toBe(3);
  });

  it("give zero without a sign", () => {
    expect(Object.is(negative(0), 0)).toBe(true);
    expect(Object.is(negative(times(0, inch)).si, 0)).toBe(true);
  });

  it("add up to nothing with the value itself", () => {
    fc.assert(
      fc.property(wide, (side) => {
        expect(plus(times(side, metre), negative(times(side, metre))).si).toBe(0);
        expect(over(absolute(times(side, metre)), metre)).toBe(Math.abs(side));
      }),
    );
  });

  it("refuse what is no value", () => {
    expect(codesOf(() => negative("2" as never))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => negative(null as never))).toEqual(["missing at "]);
    expect(codesOf(() => absolute(Number.NaN))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => absolute({} as never))).toEqual(["wrong-unit at "]);
  });
});
