import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Bought,
  kilogram,
  money,
  times,
  type YardTerms,
  yardReceipt,
} from "../../../lib/index.ts";
import { problemsOf } from "../problems.ts";

const terms = (more: Partial<YardTerms> = {}): YardTerms => ({
  yard: "Alder",
  tax: 0.0725,
  taxOn: "goods",
  tripCost: money(6, "USD"),
  delivery: money(55, "USD"),
  ...more,
});
const goods = (price: number, count: number, more: Partial<Bought> = {}): Bought => ({
  item: "compost",
  use: "fill",
  size: 1,
  count,
  price: money(price, "USD"),
  ...more,
});

describe("yardReceipt(bought, terms, options)", () => {
  // Worked by hand: 3 x 0.90 = 2.70, tax 0.19575 -> 0.20 once on the sum (0.21 by item), trip 6.00.
  it("rounds tax once, on the sum of the lines", () => {
    const receipt = yardReceipt([goods(0.9, 1), goods(0.9, 1), goods(0.9, 1)], terms());
    expect([receipt.goods.si, receipt.tax.si, receipt.total.si]).toEqual([2.7, 0.2, 8.9]);
  });

  it("rounds each line to the cent: 3 half yards at 1.01 are 1.52", () => {
    const receipt = yardReceipt([goods(1.01, 1.5)], terms({ tax: 0 }));
    expect(receipt.lines[0]?.total.si).toBe(1.52);
  });

  it("does not tax trips, and taxes delivery only where the yard does", () => {
    const load = [goods(100, 1, { delivered: true })];
    expect(yardReceipt(load, terms({ tax: 0.1 })).tax.si).toBe(10);
    expect(yardReceipt(load, terms({ tax: 0.1, taxOn: "goods and delivery" })).tax.si).toBe(15.5);
  });

  it("pays one delivery for all that is brought, and no trip for it", () => {
    const load = [goods(100, 1, { delivered: true }), goods(50, 1, { delivered: true })];
    const receipt = yardReceipt(load, terms({ tax: 0 }));
    expect([receipt.delivery.si, receipt.trips, receipt.total.si]).toEqual([55, 0, 205]);
  });

  it("adds no tax to prices that include it, but says how much of them is tax", () => {
    const receipt = yardReceipt([goods(119, 1)], terms({ tax: 0.19, tripCost: undefined }), {
      taxIncluded: true,
    });
    expect([receipt.total.si, receipt.tax.si]).toEqual([119, 19]);
  });

  it("makes as many trips as the load needs, by the yard's payload before the car's", () => {
    const load = [goods(1, 1, { mass: times(1001, kilogram) })];
    const carPayload = times(400, kilogram);
    expect(yardReceipt(load, terms(), { carPayload }).trips).toBe(3);
    expect(yardReceipt(load, terms({ payload: times(1001, kilogram) }), { carPayload }).trips).toBe(
      1,
    );
    expect(yardReceipt(load, terms()).trips).toBe(1);
  });

  it("is nothing for nothing", () => {
    const receipt = yardReceipt([], terms(), { currency: "USD" });
    expect([receipt.total.si, receipt.trips]).toEqual([0, 0]);
    expect(yardReceipt([goods(5, 0)], terms()).total.si).toBe(0);
  });

  it("adds up to the cent like a receipt, line by line", () => {
    const line = fc.record({
      price: fc.integer({ min: 0, max: 100_000 }),
      halves: fc.integer({ min: 0, max: 80 }),
      delivered: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(line, { maxLength: 20 }),
        fc.integer({ min: 0, max: 2000 }),
        (lines, tax) => {
          const bought = lines.map(({ price, halves, delivered }) =>
            goods(price / 100, halves / 2, { delivered }),
          );
          const receipt = yardReceipt(bought, terms({ tax: tax / 10_000 }), { currency: "USD" });
          const cents = (money: { readonly si: number }) => Math.round(money.si * 100);
          const sum = receipt.lines.reduce((all, { total }) => all + cents(total), 0);
          expect(cents(receipt.goods)).toBe(sum);
          const parts = [receipt.goods, receipt.delivery, receipt.tax, receipt.tripCost];
          expect(cents(receipt.total)).toBe(parts.reduce((all, part) => all + cents(part), 0));
          // No part has more digits than the currency.
          for (const part of parts)
            expect(Math.abs(part.si * 100 - cents(part))).toBeLessThan(1e-6);
          expect(Math.abs(cents(receipt.tax) - (sum * tax) / 10_000)).toBeLessThanOrEqual(
            0.5 + 1e-6,
          );
        },
      ),
    );
  });

  it.each([
    [goods(1, -1), "too-small", ["bought", 1, "count"]],
    [goods(1, Number.NaN), "unreadable", ["bought", 1, "count"]],
    [goods(1, 1e9), "too-large", ["bought", 1, "count"]],
    [{ ...goods(1, 1), price: 12 }, "wrong-unit", ["bought", 1, "price"]],
    [{ ...goods(1, 1), price: undefined }, "missing", ["bought", 1, "price"]],
    [goods(-1, 1), "too-small", ["bought", 1, "price"]],
    [goods(1e12, 1), "too-large", ["bought", 1, "price"]],
  ])("refuses %o", (bought, code, path) => {
    expect(problemsOf(() => yardReceipt([bought as Bought], terms()))).toEqual([[code, path]]);
  });

  it("refuses two currencies on one receipt", () => {
    const mixed = [goods(1, 1), goods(1, 1, { price: money(1, "EUR") })];
    expect(problemsOf(() => yardReceipt(mixed, terms()))).toEqual([
      ["mixed-currency", ["bought", 2, "price"]],
    ]);
  });
});
