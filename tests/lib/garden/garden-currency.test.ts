import { describe, expect, it } from "vitest";
import { gardenCurrency, ProblemError } from "../../../lib/index.ts";
import { problemsOf } from "../problems.ts";
import { tables } from "./garden.ts";

const of = (prices: string, yards = "") =>
  tables({ prices: `yard,item,size,price\n${prices}`, yards });

describe("gardenCurrency(tables, fallback)", () => {
  it("is that of the prices, and of the yards where prices have no sign", () => {
    expect(gardenCurrency(of("A,compost,60 L,€9\nA,topsoil,60 L,8"))).toBe("EUR");
    expect(gardenCurrency(of("A,compost,60 L,9", "yard,trip_cost\nA,£4"))).toBe("GBP");
  });

  it("is the fallback where nobody wrote a sign", () => {
    expect(gardenCurrency(of("A,compost,60 L,9"))).toBe("USD");
    expect(gardenCurrency(of("A,compost,60 L,9"), "CHF")).toBe("CHF");
  });

  it("refuses two, as one problem that names both tables and rows", () => {
    const two = of("A,compost,60 L,9\nA,topsoil,60 L,€8", "yard,trip_cost,delivery\nB,2,\nA,,$4");
    expect.assertions(3);
    try {
      gardenCurrency(two);
    } catch (error) {
      const problems = error instanceof ProblemError ? error.problems : [];
      expect(problems.map(({ code, path, also }) => [code, path, also])).toEqual([
        ["mixed-currency", ["yards", 2, "delivery"], [["prices", 2, "price"]]],
      ]);
      expect(problems[0]?.received).toBe("USD");
      expect(problems[0]?.allowed).toBe("EUR, the currency of prices, row 2, price");
    }
  });

  it("refuses a fallback that is no code", () => {
    expect(problemsOf(() => gardenCurrency(of(""), "dollars"))).toEqual([
      ["unknown", ["fallback"]],
    ]);
  });
});
