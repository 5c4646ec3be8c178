import { describe, expect, it } from "vitest";
import {
  currencyCodes,
  isCurrencyCode,
  minorDigits,
  money,
  printQuantity,
  readMoney,
} from "../../../lib/index.ts";

// The outside reference is the engine's own table (Unicode CLDR), which follows ISO 4217 but for
// currencies whose minor unit has gone out of use: there it has 0 and the standard still lists 2 or 3.
const known = new Set(Intl.supportedValuesOf("currency"));

const outOfUse = new Set(
  "AFN ALL COP HUF IDR IQD IRR KPW LAK LBP MGA MMK PKR SOS SYP YER".split(" "),
);

function engineDigits(currency: string): number | undefined {
  return new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions()
    .maximumFractionDigits;
}

describe("minor units", () => {
  it("agree with the engine's for every currency", () => {
    const differing = currencyCodes.filter((code) => minorDigits(code) !== engineDigits(code));
    expect(currencyCodes.length).toBeGreaterThan(140);
    expect(differing.filter((code) => !outOfUse.has(code))).toEqual([]);
    expect(differing.filter((code) => engineDigits(code) !== 0)).toEqual([]);
  });

  it("are two where money has no currency", () => {
    expect(minorDigits()).toBe(2);
    expect(minorDigits("JPY")).toBe(0);
    expect(minorDigits("BHD")).toBe(3);
    // Out of use, still listed with three (ISO 4217 list one, from memory).
    expect(minorDigits("IQD")).toBe(3);
  });
});

describe("codes", () => {
  it("are known to the engine, and are three capitals", () => {
    // Younger than some engines' tables.
    const young = ["SLE", "VED"];
    const foreign = currencyCodes.filter((code) => !known.has(code) && !young.includes(code));
    expect(foreign).toEqual([]);
    expect(currencyCodes.filter((code) => !/^[A-Z]{3}$/.test(code))).toEqual([]);
    expect(new Set(currencyCodes).size).toBe(currencyCodes.length);
  });

  it("are checked as written", () => {
    expect(isCurrencyCode("EUR")).toBe(true);
    expect(isCurrencyCode("eur")).toBe(false);
    expect(isCurrencyCode("ABC")).toBe(false);
    expect(isCurrencyCode("")).toBe(false);
  });

  it("are all read and printed", () => {
    for (const code of currencyCodes) {
      const reading = readMoney(printQuantity(money(1234, code)));
      expect(reading.ok && reading.value).toEqual(money(1234, code));
    }
  });
});
