// Government of Yukon, help page on rounding amounts to the cent.
import { describe, it } from "vitest";
import { amount, money, roundMoney } from "../../lib/index.ts";
import { published } from "./compare.ts";

const dollar = money(1, "CAD");
const rounded = (dollars: number) => amount(roundMoney(money(dollars, "CAD")), dollar);

describe("measure, rounding to the cent", () => {
  it("1.324 is 1.32 (READ)", () => {
    published(rounded(1.324), "1.32", 0);
  });

  it("1.325 is 1.33 (READ)", () => {
    published(rounded(1.325), "1.33", 0);
  });
});
