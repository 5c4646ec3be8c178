import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cubicFoot,
  cubicYard,
  foot,
  hour,
  inch,
  isQuantity,
  metre,
  minus,
  money,
  over,
  ProblemError,
  plus,
  pound,
  power,
  printQuantity,
  problemsOf,
  remainder,
  same,
  sentence,
  times,
} from "../../../lib/index.ts";
import { codesOf, wide } from "./generators.ts";

describe("plus and minus", () => {
  it("combine like with like", () => {
    expect(printQuantity(plus(foot, inch))).toBe("1 ft 1 in");
    expect(printQuantity(minus(foot, inch))).toBe("11 in");
    expect(plus(2, 3)).toBe(5);
    expect(minus(2, 3)).toBe(-1);
  });

  it("join texts and numbers as JavaScript does", () => {
    expect(plus("bed ", 3)).toBe("bed 3");
    expect(plus(3, " beds")).toBe("3 beds");
    expect(plus("", "")).toBe("");
  });

  it("undo each other", () => {
    fc.assert(
      fc.property(wide, wide, (a, b) => {
        const sum = plus(times(a, metre), times(b, foot));
        const back = minus(sum, times(b, foot));
        expect(amount(back, metre)).toBeCloseTo(a, 6);
      }),
    );
  });

  it("name both sides where the dimensions differ", () => {
    expect(() => plus(times(4, foot), times(2, cubicFoot) as never)).toThrow(
      "a length (4 ft) can't be added to a volume (2 cu ft)",
    );
    expect(() => minus(pound, foot as never)).toThrow(
      "a mass (1 lb) can't be reduced by a length (1 ft)",
    );
    expect(() => plus(3, foot as never)).toThrow("a number (3) can't be added to a length (1 ft)");
    expect(codesOf(() => plus(foot, cubicFoot as never))).toEqual(["wrong-unit at "]);
  });

  it("say in the problem's sentence what each side is, and offer a bare number a unit", () => {
    const said = (step: () => unknown): string => {
      try {
        return `${step()}`;
      } catch (error) {
        return (problemsOf(error) ?? []).map(sentence).join("\n");
      }
    };
    expect(said(() => plus(times(4, foot), cubicFoot as never))).toContain(
      "A length can't be added to a volume.",
    );
    expect(said(() => plus(2, pound as never))).toContain(
      "A number can't be added to a mass. Add lengths to lengths, volumes to volumes, numbers to numbers. Or give the number a unit: 2 * pound.",
    );
    expect(said(() => power(foot, 0.5 as never))).not.toContain("give the number a unit");
  });

  it("refuse what is no value instead of giving NaN", () => {
    const refused: [unknown, unknown, string][] = [
      [undefined, 3, "missing at "],
      [3, null, "missing at "],
      [{}, 3, "wrong-unit at "],
      [foot, [1], "wrong-unit at "],
      [Number.NaN, 3, "wrong-unit at "],
      [true, 1, "wrong-unit at "],
      [foot, " long", "wrong-unit at "],
    ];
    for (const [a, b, code] of refused) {
      expect(
        codesOf(() => plus(a as never, b as never)),
        String(b),
      ).toEqual([code]);
    }
  });

  it("tell how to join a quantity to a text", () => {
    expect(() => plus("depth ", foot as never)).toThrow("printQuantity");
  });
});

describe("money in sums", () => {
  it("takes the other's currency where it has none", () => {
    expect(plus(money(1), money(2, "EUR")).currency).toBe("EUR");
    expect(plus(money(1, "EUR"), money(2)).currency).toBe("EUR");
    expect(plus(money(1), money(2)).currency).toBeUndefined();
  });

  it("is never added in two currencies", () => {
    const both = () => plus(money(1, "USD"), money(2, "EUR"));
    expect(both).toThrow("money ($1.00) can't be added to money (€2.00): two currencies");
    expect(codesOf(both)).toEqual(["mixed-currency at "]);
    expect(codesOf(() => over(money(1, "USD"), money(2, "EUR")))).toEqual(["mixed-currency at "]);
  });
});

describe("times and over", () => {
  it("combine dimensions", () => {
    expect(printQuantity(times(times(4, foot), times(8, foot)))).toBe("32 sq ft");
    expect(over(cubicYard, cubicFoot)).toBeCloseTo(27, 12);
    expect(printQuantity(times(over(money(38, "USD"), cubicYard), times(2, cubicYard)))).toBe(
      "$76.00",
    );
    expect(printQuantity(over(1, over(1, hour)))).toBe("60 min");
  });

  it("give a number for like over like, and drop the currency with the money", () => {
    const ratio = over(money(3, "USD"), money(2, "USD"));
    expect(ratio).toBe(1.5);
    const bought = over(money(76, "USD"), over(money(38, "USD"), cubicYard));
    expect(printQuantity(bought)).toBe("2 cu yd");
    expect(bought.currency).toBeUndefined();
  });

  it("undo each other", () => {
    fc.assert(
      fc.property(wide, wide, (a, b) => {
        const back = over(times(times(a, foot), times(b, inch)), times(b, inch));
        expect(same(back, times(a, foot))).toBe(true);
      }),
    );
  });

  it("refuse to divide by zero, quantities and numbers alike", () => {
    expect(codesOf(() => over(foot, times(0, foot)))).toEqual(["unreadable at "]);
    expect(codesOf(() => over(foot, 0))).toEqual(["unreadable at "]);
    expect(codesOf(() => over(0, 0))).toEqual(["unreadable at "]);
    expect(codesOf(() => times(foot, Number.MAX_VALUE * 2))).toEqual(["unreadable at "]);
  });

  it("refuse texts, nothing, and powers beyond the fourth", () => {
    expect(() => times("3" as never, foot)).toThrow("readNumber");
    expect(codesOf(() => times(undefined as never, foot))).toEqual(["missing at "]);
    const fourth = times(times(foot, foot), times(foot, foot));
    expect(codesOf(() => times(fourth as never, foot as never))).toEqual(["wrong-unit at "]);
  });
});

describe("remainder", () => {
  it("is what is left, of the first's sign", () => {
    expect(printQuantity(remainder(times(99, inch), times(2, foot)))).toBe("3 in");
    expect(remainder(7, 3)).toBe(1);
    expect(remainder(-7, 3)).toBe(-1);
  });

  it("is nothing where the second goes evenly, whatever binary fractions say", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), (count) => {
        expect(remainder(times(count, foot), inch).si).toBe(0);
      }),
    );
  });

  it("refuses a zero divisor", () => {
    expect(codesOf(() => remainder(foot, times(0, inch)))).toEqual(["unreadable at "]);
  });
});

describe("quantities out of a clone", () => {
  it("are combined like others", () => {
    const cloned = structuredClone({ ...foot });
    expect(isQuantity(cloned)).toBe(true);
    expect(printQuantity(plus(cloned, foot))).toBe("2 ft");
  });

  it("are refused where their value is no number", () => {
    const broken = { ...foot, si: Number.NaN };
    expect(() => plus(broken, foot)).toThrow(ProblemError);
  });
});
