import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  atLeast,
  cubicFoot,
  cubicYard,
  foot,
  greatest,
  inch,
  least,
  less,
  metre,
  minus,
  money,
  pound,
  printQuantity,
  roundUpTo,
  same,
  sumOf,
  times,
  yard,
  zeroOf,
} from "../../../lib/index.ts";
import { codesOf, wide } from "./generators.ts";

describe("least and greatest", () => {
  it("choose among like values", () => {
    expect(printQuantity(least(foot, yard, inch))).toBe("1 in");
    expect(printQuantity(greatest(foot, yard, inch))).toBe("3 ft");
    expect(least(3, 0, 2)).toBe(0);
    expect(greatest(-3, 0)).toBe(0);
  });

  it("refuse none, and two kinds", () => {
    expect(codesOf(() => least())).toEqual(["missing at least"]);
    expect(codesOf(() => greatest())).toEqual(["missing at greatest"]);
    expect(codesOf(() => least(foot, pound as never))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => greatest(foot, undefined as never))).toEqual(["missing at "]);
  });
});

describe("sumOf", () => {
  it("adds lists of quantities and numbers, the empty one from its zero", () => {
    expect(printQuantity(sumOf([foot, foot, inch]))).toBe("2 ft 1 in");
    expect(sumOf([1, 2, 3])).toBe(6);
    expect(printQuantity(sumOf([], zeroOf(cubicYard)))).toBe("0 cu ft");
    expect(sumOf([], 0)).toBe(0);
    expect(sumOf(new Set([1, 2]))).toBe(3);
  });

  it("refuses an empty list without zero, two kinds, and a single thing that is no value", () => {
    expect(codesOf(() => sumOf([]))).toEqual(["missing at sumOf"]);
    expect(codesOf(() => sumOf([foot, cubicFoot as never]))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => sumOf(["3" as never]))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => sumOf([foot], zeroOf(pound) as never))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => sumOf([money(1, "USD"), money(1, "EUR")]))).toEqual([
      "mixed-currency at ",
    ]);
  });
});

describe("amount", () => {
  it("gives whole numbers of whole units", () => {
    fc.assert(
      fc.property(fc.integer({ min: -10_000, max: 10_000 }), (count) => {
        expect(amount(times(count, foot), foot)).toBe(count);
        expect(amount(times(count, foot), inch)).toBe(12 * count);
        expect(amount(times(count, cubicYard), cubicFoot)).toBe(27 * count);
      }),
    );
  });

  it("inverts times", () => {
    fc.assert(
      fc.property(wide, (size) => {
        expect(amount(times(size, yard), yard)).toBeCloseTo(size, 8);
      }),
    );
  });

  it("refuses another kind, a zero unit, and what is no quantity", () => {
    expect(codesOf(() => amount(foot, cubicFoot as never))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => amount(foot, zeroOf(foot)))).toEqual(["too-small at unit"]);
    expect(codesOf(() => amount(undefined as never, foot))).toEqual(["missing at "]);
    expect(codesOf(() => zeroOf(3 as never))).toEqual(["wrong-unit at "]);
  });
});

describe("roundUpTo", () => {
  it("gives the least multiple that is enough", () => {
    expect(printQuantity(roundUpTo(times(2.1, cubicYard), times(0.5, cubicYard)))).toBe(
      "2.5 cu yd",
    );
    expect(roundUpTo(0, 5)).toBe(0);
    expect(roundUpTo(-7, 5)).toBe(-5);
    expect(Object.is(roundUpTo(-2, 5), 0)).toBe(true);
    expect(roundUpTo(0.3, 0.1)).toBe(0.3);
  });

  it("is at least the value and less than a step above it", () => {
    fc.assert(
      fc.property(wide, fc.integer({ min: 1, max: 99 }), (size, sixteenths) => {
        const [value, step] = [times(size, metre), times(sixteenths, times(0.0625, inch))];
        const rounded = roundUpTo(value, step);
        const slack = times(2e-9, step);
        expect(atLeast(minus(rounded, value), times(-1, slack))).toBe(true);
        expect(less(minus(rounded, value), step) || same(minus(rounded, value), step)).toBe(true);
      }),
    );
  });

  it("does not add a step for the dust of binary fractions", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), (count) => {
        const half = times(0.5, cubicYard);
        expect(same(roundUpTo(times(count * 13.5, cubicFoot), half), times(count, half))).toBe(
          true,
        );
      }),
    );
  });

  it("refuses a step of zero or less, and two kinds", () => {
    expect(codesOf(() => roundUpTo(3, 0))).toEqual(["too-small at step"]);
    expect(codesOf(() => roundUpTo(foot, times(-1, foot)))).toEqual(["too-small at step"]);
    expect(codesOf(() => roundUpTo(foot, pound as never))).toEqual(["wrong-unit at "]);
    expect(codesOf(() => roundUpTo(undefined as never, foot as never))).toEqual(["missing at "]);
  });
});
