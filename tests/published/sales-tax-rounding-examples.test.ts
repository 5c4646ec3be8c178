// A consumer page on sales tax: $100 at 6.875 % is $6.875, which is $6.88; $6.871 is $6.87. The rule
// is that of the Streamlined Sales and Use Tax Agreement, section 324: a third decimal above four
// rounds up.
import { describe, it } from "vitest";
import { amount, money, roundMoney, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

const cent = money(0.01, "USD");
const rounded = (dollars: number) => amount(roundMoney(money(dollars, "USD")), cent) / 100;

describe("measure, rounding of sales tax", () => {
  it("$100 at 6.875 % is $6.88 of tax (READ)", () => {
    const tax = roundMoney(times(0.06875, money(100, "USD")));
    published(amount(tax, money(1, "USD")), "6.88", 0);
  });

  it("6.871 is 6.87 (READ)", () => {
    published(rounded(6.871), "6.87", 0);
  });
});
