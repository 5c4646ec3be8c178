import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  atLeast,
  atMost,
  cubicFoot,
  foot,
  inch,
  less,
  metre,
  money,
  more,
  pound,
  same,
  times,
} from "../../../lib/index.ts";
import { codesOf, wide } from "./generators.ts";

describe("comparisons", () => {
  it("order quantities of one kind, numbers, texts and dates", () => {
    expect(less(inch, foot)).toBe(true);
    expect(more(metre, foot)).toBe(true);
    expect(less(0, 0)).toBe(false);
    expect(atLeast(0, 0)).toBe(true);
    expect(less("a", "b")).toBe(true);
    expect(less({ year: 2003 }, { year: 2004, month: 1 })).toBe(true);
    expect(more({ year: 2004 }, { year: 2004, month: 1 })).toBe(false);
  });

  it("do not see the dust of binary fractions", () => {
    expect(less(times(12, inch), foot)).toBe(false);
    expect(atMost(times(12, inch), foot)).toBe(true);
    expect(more(times(0.1, metre), times(100, times(0.001, metre)))).toBe(false);
  });

  it("see any difference beyond that dust", () => {
    expect(less(metre, times(1 + 1e-10, metre))).toBe(true);
    expect(same(metre, times(1 + 1e-10, metre))).toBe(false);
  });

  it("agree with each other", () => {
    fc.assert(
      fc.property(wide, wide, (a, b) => {
        const [x, y] = [times(a, foot), times(b, inch)];
        expect(less(x, y)).toBe(!atLeast(x, y));
        expect(more(x, y)).toBe(!atMost(x, y));
        expect(less(x, y)).toBe(more(y, x));
        expect(same(x, y)).toBe(atLeast(x, y) && atMost(x, y));
      }),
    );
  });

  it("refuse two kinds and what is no value", () => {
    expect(() => less(foot, cubicFoot as never)).toThrow(
      "a length (1 ft) can't be compared with a volume (1 cu ft)",
    );
    for (const compare of [less, more, atMost, atLeast]) {
      expect(codesOf(() => compare(foot, pound as never))).toEqual(["wrong-unit at "]);
      expect(codesOf(() => compare(3, foot as never))).toEqual(["wrong-unit at "]);
      expect(codesOf(() => compare("12" as never, 5))).toEqual(["wrong-unit at "]);
      expect(codesOf(() => compare(undefined as never, 5))).toEqual(["missing at "]);
      expect(codesOf(() => compare(Number.NaN, 5))).toEqual(["wrong-unit at "]);
    }
    expect(codesOf(() => less(money(1, "USD"), money(2, "EUR")))).toEqual(["mixed-currency at "]);
  });
});

describe("same", () => {
  it("compares quantities and dates by value, anything else as ===", () => {
    const record = {};
    expect(same(times(3, foot), times(36, inch))).toBe(true);
    expect(same(foot, pound)).toBe(false);
    expect(same(foot, 1)).toBe(false);
    expect(same(money(1, "USD"), money(1, "EUR"))).toBe(false);
    expect(same(money(1, "USD"), money(1))).toBe(true);
    expect(same({ year: 2026, month: 4 }, { year: 2026, month: 4 })).toBe(true);
    expect(same({ year: 2026, month: 4 }, { year: 2026 })).toBe(false);
    expect(same(record, record)).toBe(true);
    expect(same({}, {})).toBe(false);
    expect(same(undefined, null)).toBe(false);
    expect(same("a", "a")).toBe(true);
  });
});
