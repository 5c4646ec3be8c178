import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cubicFoot,
  cubicMetre,
  cubicYard,
  day,
  fluidOunce,
  foot,
  gallon,
  gram,
  hour,
  inch,
  type Kind,
  kilogram,
  litre,
  metre,
  millimetre,
  minute,
  money,
  over,
  type PrintOptions,
  pound,
  poundPerCubicFoot,
  printParts,
  printQuantity,
  type Quantity,
  quantity,
  readQuantity,
  second,
  squareFoot,
  squareMetre,
  times,
  week,
  year,
} from "../../../lib/index.ts";
import { codesOf, sixteenths, style, system, wide } from "./generators.ts";

const inches = (count: number) => times(count, inch);

describe("US lengths", () => {
  it("come in feet, inches and sixteenths, and carry", () => {
    const expected: [number, string, string][] = [
      [0, "0 in", "0″"],
      [0.125, "1/8 in", "1⁄8″"],
      [0.5, "1/2 in", "1⁄2″"],
      [3.5, "3 1/2 in", "3 1⁄2″"],
      [11.25, "11 1/4 in", "11 1⁄4″"],
      [11.999, "1 ft", "1′"],
      [12.0625, "1 ft 1/16 in", "1′ 1⁄16″"],
      [71.9375, "5 ft 11 15/16 in", "5′ 11 15⁄16″"],
      [96, "8 ft", "8′"],
      [99.5, "8 ft 3 1/2 in", "8′ 3 1⁄2″"],
      [-3.5, "-3 1/2 in", "−3 1⁄2″"],
      [-14, "-1 ft 2 in", "−1′ 2″"],
    ];
    for (const [count, plain, typographic] of expected) {
      expect(printQuantity(inches(count))).toBe(plain);
      expect(printQuantity(inches(count), { style: "typographic" })).toBe(typographic);
    }
  });

  it("come in decimals where a sixteenth is too coarse, or the length is great", () => {
    expect(printQuantity(inches(0.138))).toBe("0.138 in");
    expect(printQuantity(inches(2.46))).toBe("2.46 in");
    expect(printQuantity(times(1234.56, foot))).toBe("1,235 ft");
    expect(printQuantity(inches(99.5), { unit: "in" })).toBe("99.5 in");
    expect(printQuantity(inches(99.5), { digits: 3 })).toBe("99.5 in");
  });

  it("say a figure and no unit beside it, for the unit stands inside", () => {
    expect(printParts(inches(99.5))).toEqual({
      text: "8 ft 3 1/2 in",
      number: "8 ft 3 1/2 in",
      unit: "",
      second: "2.527 m",
    });
  });
});

describe("decimals", () => {
  it("keep three significant digits and every whole one", () => {
    expect(printQuantity(times(1516.44, pound))).toBe("1,516 lb");
    expect(printQuantity(times(4.2, cubicYard))).toBe("4.2 cu yd");
    expect(printQuantity(times(12.3456, cubicYard))).toBe("12.3 cu yd");
    expect(printQuantity(times(2, cubicFoot), { system: "metric" })).toBe("56.6 L");
    expect(printQuantity(times(1.0049, cubicYard), { digits: 5 })).toBe("1.0049 cu yd");
  });

  it("choose the unit by size, after rounding", () => {
    expect(printQuantity(cubicYard)).toBe("1 cu yd");
    expect(printQuantity(times(26.4, cubicFoot))).toBe("26.4 cu ft");
    expect(printQuantity(times(26.99, cubicFoot))).toBe("1 cu yd");
    expect(printQuantity(times(0.0577, cubicFoot))).toBe("0.432 gal");
    expect(printQuantity(times(0.005, cubicFoot))).toBe("8.64 cu in");
    expect(printQuantity(times(999.6, litre), { system: "metric" })).toBe("1 m³");
    expect(printQuantity(times(15.98, over(pound, 16)))).toBe("1 lb");
    expect(printQuantity(times(250, gram), { system: "metric" })).toBe("250 g");
    expect(printQuantity(times(12, metre), { system: "metric" })).toBe("12 m");
    expect(printQuantity(times(1.2192, metre), { system: "metric" })).toBe("1.219 m");
    expect(printQuantity(times(999.9, millimetre), { system: "metric" })).toBe("1 m");
    expect(printQuantity(times(47, millimetre), { system: "metric" })).toBe("47 mm");
  });

  it("use gallons for liquids", () => {
    expect(printQuantity(times(2, gallon), { liquid: true })).toBe("2 gal");
    expect(printQuantity(times(4, fluidOunce), { liquid: true })).toBe("4 fl oz");
    expect(printQuantity(gallon, { liquid: true, system: "metric" })).toBe("3.79 L");
  });

  it("print nothing in the unit people expect, never -0", () => {
    expect(printQuantity(times(0, cubicYard))).toBe("0 cu ft");
    expect(printQuantity(times(0, cubicYard), { system: "metric" })).toBe("0 L");
    expect(printQuantity(times(-1e-9, metre))).toBe("0 in");
    expect(printQuantity(times(-1e-30, pound))).toBe("0 oz");
    expect(printQuantity(money(-0.001, "USD"))).toBe("$0.00");
  });

  it("round a half away from zero, as the decimal digits say", () => {
    expect(printQuantity(times(1.005, cubicYard))).toBe("1.01 cu yd");
    expect(printQuantity(times(-1.005, cubicYard))).toBe("-1.01 cu yd");
  });

  it("take a decimal comma, and leave thousands together where asked", () => {
    expect(printQuantity(times(1516.44, kilogram), { system: "metric", decimal: "," })).toBe(
      "1 516 kg",
    );
    expect(printQuantity(times(2.5, cubicYard), { decimal: "," })).toBe("2,5 cu yd");
    expect(printQuantity(times(1516, pound), { grouped: false })).toBe("1516 lb");
  });
});

describe("times", () => {
  it("come in the unit their size calls for", () => {
    expect(printQuantity(times(43, hour))).toBe("43 h");
    expect(printQuantity(times(50, minute))).toBe("50 min");
    expect(printQuantity(times(50, second))).toBe("50 s");
    expect(printQuantity(times(12, day))).toBe("12 days");
    expect(printQuantity(times(15, year))).toBe("15 years");
    expect(printQuantity(day, { unit: "days" })).toBe("1 day");
    expect(printParts(times(43, hour)).second).toBeUndefined();
  });
});

describe("money and prices", () => {
  it("are printed to the minor unit, with sign or code", () => {
    expect(printQuantity(money(1516.44, "USD"))).toBe("$1,516.44");
    expect(printQuantity(money(-5, "USD"))).toBe("-$5.00");
    expect(printQuantity(money(-5, "EUR"), { style: "typographic" })).toBe("−€5.00");
    expect(printQuantity(money(12, "CHF"))).toBe("CHF 12.00");
    expect(printQuantity(money(1250, "JPY"))).toBe("JPY 1,250");
    expect(printQuantity(money(1.2345, "KWD"))).toBe("KWD 1.235");
    expect(printQuantity(money(12))).toBe("12.00");
  });

  it("are printed per unit of the system", () => {
    const price = over(money(38, "USD"), cubicYard);
    expect(printQuantity(price)).toBe("$38.00 / cu yd");
    expect(printQuantity(price, { system: "metric" })).toBe("$49.70 / m³");
    expect(printQuantity(price, { unit: "/ cu ft" })).toBe("$1.41 / cu ft");
    expect(printParts(price).unit).toBe("/ cu yd");
    expect(printQuantity(over(money(0.0042, "USD"), squareFoot))).toBe("$0.0042 / sq ft");
  });
});

describe("dimensions without a kind", () => {
  it("are printed in coherent SI, or in a unit that is named", () => {
    const rain = over(inch, week);
    expect(printQuantity(rain)).toBe("0.000000042 m/s");
    expect(printQuantity(rain, { unit: "in/week" })).toBe("1 in/week");
    expect(printQuantity(over(1, year), { unit: "1/yr" })).toBe("1 1/yr");
    expect(printQuantity(over(pound, times(squareFoot, second)))).toBe("4.88 kg/(m²·s)");
  });
});

describe("what cannot be printed", () => {
  it("is refused by name", () => {
    expect(codesOf(() => printQuantity(undefined as never))).toEqual(["missing at quantity"]);
    expect(codesOf(() => printQuantity(3 as never))).toEqual(["wrong-unit at quantity"]);
    expect(codesOf(() => printParts("8 ft" as never))).toEqual(["unreadable at quantity"]);
    const broken = { ...foot, si: Number.NaN };
    expect(codesOf(() => printQuantity(broken))).toEqual(["unreadable at quantity"]);
    expect(codesOf(() => printQuantity(foot, { unit: "lb" }))).toEqual(["wrong-unit at unit"]);
    expect(codesOf(() => printQuantity(foot, { digits: 0 }))).toEqual(["too-small at digits"]);
    expect(codesOf(() => printQuantity(foot, { digits: 16 }))).toEqual(["too-large at digits"]);
    expect(codesOf(() => printQuantity(foot, { digits: 2.5 }))).toEqual(["unreadable at digits"]);
    const system = "imperial" as never;
    expect(codesOf(() => printQuantity(foot, { system }))).toEqual(["unknown at system"]);
  });
});

// The printed precision: half a sixteenth, or half a unit of the third digit; for a length under
// 3 in that is off a sixteenth three digits; for money half a cent.
const kinds: [Kind, Quantity, number][] = [
  ["length", metre, 0.0008],
  ["area", squareMetre, 0],
  ["volume", cubicMetre, 0],
  ["mass", kilogram, 0],
  ["duration", hour, 0],
  ["density", poundPerCubicFoot, 0],
  ["price per volume", over(money(1, "USD"), cubicMetre), 0.01],
  ["price per mass", over(money(1, "EUR"), kilogram), 0.02],
  ["price per length", over(money(1, "CHF"), metre), 0.02],
  ["price per area", over(money(1), squareMetre), 0.06],
];

function readBack(kind: Kind, text: string, options: PrintOptions): Quantity {
  const reading = readQuantity(text, kind, { decimal: options.decimal ?? "." });
  if (!reading.ok) throw new Error(`${text}: ${reading.problem.remedy}`);
  return reading.value;
}

describe("what was printed reads back as the same", () => {
  const decimal = fc.constantFrom("." as const, "," as const);

  it.each(kinds)("within the printed precision: %s", (kind, unit, floorSi) => {
    fc.assert(
      fc.property(wide, system, style, decimal, (size, ...[inSystem, inStyle, mark]) => {
        const options = { system: inSystem, style: inStyle, decimal: mark };
        const value: Quantity = quantity(size * unit.si, unit.dim, unit.currency);
        const back = readBack(kind, printQuantity(value, options), options);
        const tolerance = Math.max(0.00501 * Math.abs(value.si), floorSi);
        expect(Math.abs(back.si - value.si)).toBeLessThanOrEqual(tolerance);
        expect(back.currency).toBe(value.currency);
        // Printing what was read changes nothing more.
        expect(printQuantity(back, options)).toBe(printQuantity(value, options));
      }),
      { numRuns: 400 },
    );
  });

  it("exactly for whole sixteenths of an inch", () => {
    fc.assert(
      fc.property(sixteenths, style, (count, inStyle) => {
        const value = times(count / 16, inch);
        const back = readBack("length", printQuantity(value, { style: inStyle }), {});
        expect(amount(back as typeof inch, inch)).toBe(count / 16);
      }),
      { numRuns: 1000 },
    );
  });

  it("exactly for whole cents, whole yen and thousandths", () => {
    const currency = fc.constantFrom<[string, number]>(["USD", 100], ["JPY", 1], ["KWD", 1000]);
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), currency, style, (count, ...rest) => {
        const [[code, parts], inStyle] = rest;
        const value = money(count / parts, code);
        expect(readBack("money", printQuantity(value, { style: inStyle }), {})).toEqual(value);
      }),
    );
  });

  it("with fifteen digits to the last bits", () => {
    fc.assert(
      fc.property(wide, system, (size, inSystem) => {
        const value = times(size, cubicMetre);
        const back = readBack("volume", printQuantity(value, { system: inSystem, digits: 15 }), {});
        expect(Math.abs(back.si / value.si - 1)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe("the two systems", () => {
  it("agree within what both print", () => {
    fc.assert(
      fc.property(wide, (size) => {
        const { text, second = "" } = printParts(times(size, pound));
        const one = readBack("mass", text, {}).si;
        const other = readBack("mass", second, {}).si;
        expect(Math.abs(one - other)).toBeLessThanOrEqual(0.0101 * Math.abs(one));
      }),
    );
  });
});
