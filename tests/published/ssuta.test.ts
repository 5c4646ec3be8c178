// Streamlined Sales and Use Tax Agreement, section 324 (READ): the tax is carried to the third
// decimal place and rounded up to a whole cent when that digit is greater than four; it may be worked
// out per item or per invoice. The rule is carried out here in whole numbers, digit by digit.
import { describe, expect, it } from "vitest";
import { amount, money, salesTax, type YardTerms, yardReceipt } from "../../lib/index.ts";

const cent = money(0.01, "USD");

/** Cents of tax by the text of section 324, from cents and a rate in thousandths of a per cent. */
function bySection324(cents: number, rate: number): number {
  const millionths = BigInt(cents) * BigInt(rate);
  // Cents times rate / 100,000 is the tax in cents; its third decimal in dollars is a tenth of a cent.
  const tenths = (millionths * 10n) / 100_000n;
  return Number(tenths / 10n) + (tenths % 10n > 4n ? 1 : 0);
}

describe("cost, section 324 of the agreement", () => {
  it.each([6875, 7250, 6000, 8250, 4712])(
    "every sum to 60 dollars at %d thousandths of a per cent (READ)",
    (rate) => {
      for (let cents = 0; cents <= 6000; cents += 1) {
        const tax = salesTax(money(cents / 100, "USD"), rate / 100_000);
        expect(amount(tax, cent)).toBe(bySection324(cents, rate));
      }
    },
  );

  it("an invoice is taxed once, on its sum (READ)", () => {
    const terms: YardTerms = { yard: "Alder", tax: 0.0725, taxOn: "goods" };
    const item = { item: "bag", use: "", size: 1, count: 1, price: money(0.9, "USD") };
    const { tax } = yardReceipt([item, item, item], terms);
    expect(amount(tax, cent)).toBe(bySection324(270, 7250));
  });
});
