import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { money, quantity, roundMoney, salesTax } from "../../../lib/index.ts";
import { problemsOf } from "../problems.ts";

describe("salesTax(sum, rate, options)", () => {
  // The agreement's rule, derived: the third decimal decides, 0 to 4 down and 5 to 9 up, on the
  // product itself. Rounding 0.0646 to 0.065 first would give 0.07.
  it.each([
    [0.646, 0.1, 0.06],
    [100, 0.06875, 6.88],
    [3.27, 0.0725, 0.24],
    [0.9, 0.0725, 0.07],
    [2.7, 0.0725, 0.2],
    [0, 0.0725, 0],
    [12.34, 0, 0],
  ])("%d at %d is %d", (sum, rate, tax) => {
    expect(salesTax(money(sum, "USD"), rate).si).toBe(tax);
  });

  it("rounds halves up, not to even", () => {
    expect(salesTax(money(1.25, "USD"), 0.1).si).toBe(0.13);
    expect(salesTax(money(1.35, "USD"), 0.1).si).toBe(0.14);
  });

  it("finds the tax inside a price", () => {
    expect(salesTax(money(119, "EUR"), 0.19, { included: true }).si).toBe(19);
  });

  it("rounds to whole yen and to thousandths of a dinar", () => {
    expect(salesTax(money(105, "JPY"), 0.1).si).toBe(11);
    expect(salesTax(money(1.005, "KWD"), 0.1).si).toBe(0.101);
  });

  it("is the same whether taken out of a price with tax or put on one without", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e7 }),
        fc.constantFrom(0.05, 0.07, 0.19, 0.2),
        (cents, rate) => {
          const net = money(cents / 100, "EUR");
          const tax = salesTax(net, rate);
          const gross = roundMoney(money(net.si + tax.si, "EUR"));
          const inside = salesTax(gross, rate, { included: true });
          expect(Math.abs(inside.si - tax.si)).toBeLessThan(0.0101);
        },
      ),
    );
  });

  it.each([
    [undefined, 0.06, "missing", ["sum"]],
    [12, 0.06, "wrong-unit", ["sum"]],
    [quantity(1, [1, 0, 0, 0, 0]), 0.06, "wrong-unit", ["sum"]],
    [money(-1, "USD"), 0.06, "too-small", ["sum"]],
    [money(1e12, "USD"), 0.06, "too-large", ["sum"]],
    [money(1, "USD"), undefined, "missing", ["rate"]],
    [money(1, "USD"), "6 %", "unreadable", ["rate"]],
    [money(1, "USD"), -0.1, "too-small", ["rate"]],
    [money(1, "USD"), 6, "too-large", ["rate"]],
    [money(1, "USD"), Number.NaN, "unreadable", ["rate"]],
  ])("refuses %o at %o", (sum, rate, code, path) => {
    expect(problemsOf(() => salesTax(sum as never, rate as never))).toEqual([[code, path]]);
  });
});
