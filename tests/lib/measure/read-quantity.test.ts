import { describe, expect, it } from "vitest";
import {
  cubicYard,
  foot,
  inch,
  type Kind,
  metre,
  money,
  over,
  pound,
  printQuantity,
  type ReadOptions,
  readQuantity,
  sentence,
  times,
} from "../../../lib/index.ts";
import { codesOf } from "./generators.ts";

function read(kind: Kind, text: string, options: ReadOptions<never> = {}): number | string {
  const reading = readQuantity(text, kind, options);
  return reading.ok ? reading.value.si : reading.problem.code;
}

describe("texts people write", () => {
  // Values in SI by the definitions: 1 in = 0.0254 m, 1 lb = 0.45359237 kg, 1 gal = 231 in³.
  const written: readonly [Kind, string, number][] = [
    ["length", "8 ft", 2.4384],
    ["length", "8ft", 2.4384],
    ["length", "8 FT", 2.4384],
    ["length", "8'", 2.4384],
    ["length", "8′", 2.4384],
    ["length", "8’", 2.4384],
    ["length", "8 feet", 2.4384],
    ["length", "8 ft.", 2.4384],
    ["length", `8' 3 1/2"`, 2.5273],
    ["length", `8'3-1/2"`, 2.5273],
    ["length", "8′ 3½″", 2.5273],
    ["length", "8′ 3 1⁄2″", 2.5273],
    ["length", "8 ft 3 1/2 in", 2.5273],
    ["length", "8ft3.5in", 2.5273],
    ["length", "8 ft, 3 1/2 in".replace(",", ""), 2.5273],
    ["length", "99.5 in", 2.5273],
    ["length", "99 1/2 in", 2.5273],
    ["length", `99½"`, 2.5273],
    ["length", "99½''", 2.5273],
    ["length", "⅛ in", 0.003175],
    ["length", "⅞″", 0.022225],
    ["length", "5⁄8 in", 0.015875],
    ["length", ".5 in", 0.0127],
    ["length", "2.4 m", 2.4],
    ["length", "240 cm", 2.4],
    ["length", "2400 mm", 2.4],
    ["length", "2 400 mm", 2.4],
    ["length", "2,400 mm", 2.4],
    ["length", "2 m 40 cm", 2.4],
    ["length", "-3 in", -0.0762],
    ["length", "−3 in", -0.0762],
    ["length", "+3 in", 0.0762],
    ["length", "1e3 mm", 1],
    ["area", "32 sq ft", 2.97289728],
    ["area", "32 ft2", 2.97289728],
    ["area", "32 ft²", 2.97289728],
    ["area", "3 square metres", 3],
    ["volume", "1 yd3", 0.764554857984],
    ["volume", "1 cu yd", 0.764554857984],
    ["volume", "1yd³", 0.764554857984],
    ["volume", "27 cubic feet", 0.764554857984],
    ["volume", "27 ft^3", 0.764554857984],
    ["volume", "1 CY", 0.764554857984],
    ["volume", "3 ft³", 0.084950539776],
    ["volume", "60 L", 0.06],
    ["volume", "60 l", 0.06],
    ["volume", "60 liters", 0.06],
    ["volume", "1 gal", 0.003785411784],
    ["volume", "128 fl oz", 0.003785411784],
    ["volume", "1 cu yd 27 cu ft", 1.529109715968],
    ["volume", "0.5 m3", 0.5],
    ["mass", "40 lb", 18.1436948],
    ["mass", "40 lbs", 18.1436948],
    ["mass", "5 lb 4 oz", 2.3813599425],
    ["mass", "1,250 lb", 566.9904625],
    ["mass", "1 short ton", 907.18474],
    ["mass", "1 t", 1000],
    ["duration", "1 h 30 min", 5400],
    ["duration", "3 days", 259200],
    ["duration", "2 weeks", 1209600],
    ["duration", "15 years", 473040000],
    ["density", "640 kg/m3", 640],
    ["density", "640 kg/m³", 640],
    ["density", "640 kg per m3", 640],
    ["density", "1 g/cm3", 1000],
    ["money", "$23.50", 23.5],
    ["money", "$ 1,250", 1250],
    ["money", "23.50", 23.5],
    ["money", "€12", 12],
    ["money", "12.50 €", 12.5],
    ["money", "USD 12", 12],
    ["money", "12 chf", 12],
    ["money", "-$5", -5],
    ["money", "$-5", -5],
    ["money", "£.50", 0.5],
    ["price per volume", "€45/m³", 45],
    ["price per volume", "€45 per m3", 45],
    ["price per volume", "45 / m³", 45],
    ["price per length", "4.10 EUR / m", 4.1],
    ["price per mass", "$1 / kg", 1],
    ["price per area", "0.35 / m2", 0.35],
  ];

  it.each(written)("%s: %s", (kind, text, si) => {
    const value = read(kind, text);
    expect(value).toBeTypeOf("number");
    expect(Math.abs(Number(value) - si)).toBeLessThanOrEqual(1e-12 * Math.abs(si));
  });

  it("carry their currency", () => {
    const currencies = ["$5", "€5", "5 £", "CHF 5", "5"].map((text) => {
      const reading = readQuantity(text, "money");
      return reading.ok ? reading.value.currency : "";
    });
    expect(currencies).toEqual(["USD", "EUR", "GBP", "CHF", undefined]);
    const price = readQuantity("€45 / m³", "price per volume");
    expect(price.ok && price.value.currency).toBe("EUR");
  });
});

describe("texts with a decimal comma", () => {
  it("are read where the table has one", () => {
    expect(read("money", "12,50 €", { decimal: "," })).toBe(12.5);
    expect(read("mass", "1 250,5 kg", { decimal: "," })).toBe(1250.5);
    expect(read("mass", "1.250,5 kg", { decimal: "," })).toBe(1250.5);
    expect(read("length", "2,438 m", { decimal: "," })).toBe(2.438);
    expect(read("length", "3 1/2 in", { decimal: "," })).toBeCloseTo(0.0889, 12);
  });

  it("are refused where one digit more or less would change the meaning", () => {
    expect(read("money", "12,50 €")).toBe("unreadable");
    expect(read("length", "1,25 m")).toBe("unreadable");
    expect(read("length", "1,2500 m")).toBe("unreadable");
    expect(read("length", "2.438 m", { decimal: "," })).toBe("unreadable");
    expect(read("length", "1.2.3 m")).toBe("unreadable");
    expect(read("mass", "1.250,5 kg")).toBe("unreadable");
  });
});

describe("a bare number", () => {
  it("takes the unit it is given, as symbol or quantity", () => {
    expect(read("length", "12", { unit: "in" })).toBeCloseTo(0.3048, 12);
    expect(read("length", "12", { unit: inch } as never)).toBeCloseTo(0.3048, 12);
    expect(read("volume", "2", { unit: "yd3" })).toBeCloseTo(1.529109715968, 12);
    expect(read("length", "3 1/2", { unit: "in" })).toBeCloseTo(0.0889, 12);
    const price = over(money(1, "EUR"), cubicYard);
    const reading = readQuantity("38", "price per volume", { unit: price });
    expect(reading.ok && printQuantity(reading.value)).toBe("€38.00 / cu yd");
  });

  it("keeps the unit that is written", () => {
    expect(read("length", "12 cm", { unit: "in" })).toBe(0.12);
  });

  it("is refused without one", () => {
    expect(read("length", "12")).toBe("wrong-unit");
    expect(read("length", "0")).toBe("wrong-unit");
    expect(read("length", "8' 3")).toBe("wrong-unit");
    expect(read("price per volume", "38")).toBe("wrong-unit");
  });

  it("cannot take a unit of another kind: that is the caller's mistake", () => {
    expect(codesOf(() => readQuantity("12", "length", { unit: "lb" }))).toEqual([
      "wrong-unit at unit",
    ]);
    expect(codesOf(() => readQuantity("12", "length", { unit: "furlong" }))).toEqual([
      "wrong-unit at unit",
    ]);
  });
});

describe("texts that are refused", () => {
  const refused: readonly [Kind, string, string, string][] = [
    ["length", "", "missing", "6 ft"],
    ["length", "  ", "missing", "6 ft"],
    ["length", "6 fot", "unreadable", "“fot” is no unit"],
    ["length", "ft", "unreadable", "begin with a number"],
    ["length", "two feet", "unreadable", "begin with a number"],
    ["length", "1/0 in", "unreadable", "divides by zero"],
    ["length", "NaN ft", "unreadable", "begin with a number"],
    ["length", "Infinity ft", "unreadable", "begin with a number"],
    ["length", "1e999 m", "unreadable", "too large"],
    ["length", "8.5 ft 3 in", "unreadable", "smallest unit"],
    ["length", "3 in 8 ft", "unreadable", "larger units first"],
    ["length", "8 ft 8 ft", "unreadable", "larger units first"],
    ["length", "2 sq ft", "wrong-unit", "an area"],
    ["length", "4 lb", "wrong-unit", "a mass"],
    ["volume", "3 yd", "wrong-unit", "for the yard of soil"],
    ["volume", "12 oz", "wrong-unit", "for a liquid write fl oz"],
    ["volume", "8 qt", "unreadable", "dry or liquid"],
    ["mass", "2 tons", "unreadable", "short ton"],
    ["duration", "2 months", "unreadable", "Months differ"],
    ["duration", "3 m", "wrong-unit", "a length"],
    ["money", "abc", "unreadable", "$23.50"],
    ["money", "5 lb", "wrong-unit", "no currency"],
    ["money", "XYZ 5", "unreadable", "ISO 4217"],
    ["money", "$5 USD", "unreadable", "$23.50"],
    ["money", "--5", "unreadable", "$23.50"],
    ["money", "$", "unreadable", "$23.50"],
    ["price per volume", "$38 / bag", "unreadable", "after the stroke"],
    ["price per volume", "$38 / ft", "wrong-unit", "something else"],
    ["price per volume", "lots / cu yd", "unreadable", "$38 / cu yd"],
    ["density", "40 lb", "wrong-unit", "a mass"],
  ];

  it.each(refused)("%s: “%s” is %s", (kind, text, code, remedy) => {
    const reading = readQuantity(text, kind, { path: ["beds", 3, "x"] });
    expect(reading.ok).toBe(false);
    if (reading.ok) return;
    const { problem } = reading;
    expect(problem).toMatchObject({ code, path: ["beds", 3, "x"], received: text });
    expect(problem.remedy).toContain(remedy);
    expect(sentence(problem)).toMatch(/^beds, row 3, x: /);
  });

  it("include what is no text", () => {
    expect(read("length", undefined as never)).toBe("missing");
    expect(read("length", 12 as never)).toBe("unreadable");
    expect(read("length", {} as never)).toBe("unreadable");
  });
});

describe("bounds", () => {
  const bounds = { min: inch, max: times(100, foot) };

  it("are allowed themselves, in any unit", () => {
    expect(readQuantity("1 in", "length", bounds).ok).toBe(true);
    expect(readQuantity("25.4 mm", "length", bounds).ok).toBe(true);
    expect(readQuantity("30.48 m", "length", bounds).ok).toBe(true);
    expect(readQuantity("0 in", "length", { min: times(0, inch) }).ok).toBe(true);
  });

  it("refuse what is beyond, and say so with units", () => {
    const small = readQuantity("1/2 in", "length", { ...bounds, path: ["depth"] });
    const large = readQuantity("101 ft", "length", { ...bounds, path: ["depth"] });
    expect(small.ok || sentence(small.problem)).toBe(
      "depth: “1/2 in” is too small; allowed is a length from 1 in to 100 ft. Give at least 1 in.",
    );
    expect(large.ok || large.problem.code).toBe("too-large");
  });

  it("can leave the bound itself out", () => {
    const above = { above: times(0, inch) };
    expect(readQuantity("0 in", "length", above).ok).toBe(false);
    expect(readQuantity("0.001 in", "length", above).ok).toBe(true);
    const below = { below: foot };
    const reading = readQuantity("12 in", "length", below);
    expect(reading.ok || reading.problem).toMatchObject({
      code: "too-large",
      allowed: "a length below 1 ft",
    });
  });

  it("are printed so that they read back as themselves", () => {
    const limits = [metre, times(0.1, inch), times(7.77, foot), times(1234.5678, metre)];
    for (const max of limits) {
      const reading = readQuantity("9 km", "length", { max });
      const allowed = reading.ok ? "" : reading.problem.allowed.replace("a length of at most ", "");
      expect(readQuantity(allowed, "length", { max }).ok, allowed).toBe(true);
      expect(readQuantity(allowed, "length", { min: max }).ok, allowed).toBe(true);
    }
    const mass = readQuantity("99 t", "mass", { max: times(35.3, pound) });
    expect(mass.ok || mass.problem.allowed).toBe("a mass of at most 35.3 lb");
  });
});
