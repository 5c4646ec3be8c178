import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Bought,
  money,
  shareReceipts,
  type YardTerms,
  yardReceipt,
} from "../../../lib/index.ts";

const terms: YardTerms = { yard: "Alder", tax: 0.06, taxOn: "goods", tripCost: money(6, "USD") };
const bought = (price: number, shares: Bought["shares"]): Bought => ({
  item: "compost",
  use: "fill",
  size: 1,
  count: 1,
  price: money(price, "USD"),
  ...(shares === undefined ? {} : { shares }),
});
const share = (bed: string, weight: number) => ({ bed, share: weight });

describe("shareReceipts(receipts, beds, currency)", () => {
  // By hand: goods 30 to A and 10 to B; tax 2.40 and trip 6.00 go with them, 48.40 in all.
  it("lets tax and trips go with the goods", () => {
    const receipt = yardReceipt([bought(30, [share("A", 5)]), bought(10, [share("B", 1)])], terms);
    expect(shareReceipts([receipt], ["A", "B"]).map(({ bed, money: m }) => [bed, m.si])).toEqual([
      ["A", 36.3],
      ["B", 12.1],
    ]);
  });

  it("names what is for no bed in particular", () => {
    const receipt = yardReceipt([bought(10, undefined)], terms);
    expect(shareReceipts([receipt], ["A"]).map(({ bed, money: m }) => [bed, m.si])).toEqual([
      ["A", 0],
      ["", 16.6],
    ]);
  });

  it("gives every bed nothing where nothing is bought", () => {
    expect(shareReceipts([], ["A"], "USD")).toEqual([{ bed: "A", money: money(0, "USD") }]);
  });

  it("adds up to the receipts to the cent", () => {
    const line = fc.record({
      price: fc.nat(50_000),
      weights: fc.array(fc.nat(9), { minLength: 1, maxLength: 6 }),
    });
    fc.assert(
      fc.property(fc.array(fc.array(line, { maxLength: 5 }), { maxLength: 3 }), (yards) => {
        const receipts = yards.map((lines) =>
          yardReceipt(
            lines.map(({ price, weights }) =>
              bought(
                price / 100,
                weights.map((weight, place) => share(`B${place}`, weight)),
              ),
            ),
            terms,
            { currency: "USD" },
          ),
        );
        const cents = (m: { readonly si: number }) => Math.round(m.si * 100);
        const total = receipts.reduce((sum, receipt) => sum + cents(receipt.total), 0);
        const shared = shareReceipts(receipts, ["B0"], "USD");
        expect(shared.reduce((sum, each) => sum + cents(each.money), 0)).toBe(total);
      }),
    );
  });
});
