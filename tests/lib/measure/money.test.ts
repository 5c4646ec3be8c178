import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addMoney, money, printQuantity, roundMoney, same, sumOf } from "../../../lib/index.ts";
import { codesOf } from "./generators.ts";

describe("money", () => {
  it("holds an amount and its currency", () => {
    expect(money(23.5, "USD")).toMatchObject({ si: 23.5, currency: "USD" });
    expect("currency" in money(23.5)).toBe(false);
    expect(Object.is(money(-0).si, 0)).toBe(true);
  });

  it("refuses what is no amount and no currency", () => {
    expect(codesOf(() => money(undefined as never))).toEqual(["missing at amount"]);
    expect(codesOf(() => money("5" as never))).toEqual(["unreadable at amount"]);
    expect(codesOf(() => money(Number.NaN))).toEqual(["unreadable at amount"]);
    expect(codesOf(() => money(Number.POSITIVE_INFINITY))).toEqual(["unreadable at amount"]);
    expect(codesOf(() => money(5, "usd"))).toEqual(["unknown at currency"]);
    expect(codesOf(() => money(5, "XYZ"))).toEqual(["unknown at currency"]);
  });
});

describe("roundMoney", () => {
  it("rounds a half away from zero, on the decimal amount and not its binary neighbour", () => {
    expect(roundMoney(money(1.005, "USD")).si).toBe(1.01);
    expect(roundMoney(money(-1.005, "USD")).si).toBe(-1.01);
    expect(roundMoney(money(0.125)).si).toBe(0.13);
    expect(roundMoney(money(0.135)).si).toBe(0.14);
    expect(roundMoney(money(0.0646)).si).toBe(0.06);
    expect(roundMoney(money(1250.5, "JPY")).si).toBe(1251);
    expect(roundMoney(money(1.0005, "KWD")).si).toBe(1.001);
    expect(Object.is(roundMoney(money(-0.001)).si, 0)).toBe(true);
  });

  it("agrees with rounding in whole thousandths", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (thousandths) => {
        const cents = Math.sign(thousandths) * Math.floor((Math.abs(thousandths) + 5) / 10);
        expect(roundMoney(money(thousandths / 1000)).si).toBe(cents / 100 + 0);
      }),
      { numRuns: 1000 },
    );
  });

  it("leaves what is round, and keeps the currency", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (cents) => {
        expect(roundMoney(money(cents / 100, "EUR"))).toEqual(money(cents / 100, "EUR"));
      }),
    );
  });
});

describe("addMoney", () => {
  it("adds in one currency", () => {
    expect(printQuantity(addMoney(money(23.5, "USD"), money(12), money(0.01)))).toBe("$35.51");
    const amounts = [money(0.1), money(0.2), money(0.3, "EUR")];
    expect(same(roundMoney(addMoney(...amounts)), roundMoney(sumOf(amounts)))).toBe(true);
  });

  it("refuses two currencies, none at all, and what is no money", () => {
    const two = () => addMoney(money(1, "USD"), money(2), money(3, "EUR"));
    expect(codesOf(two)).toEqual(["mixed-currency at "]);
    expect(codesOf(() => addMoney())).toEqual(["missing at sumOf"]);
    expect(codesOf(() => addMoney(money(1), 2 as never))).toEqual(["wrong-unit at amounts.2"]);
  });
});
