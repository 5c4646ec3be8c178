import { describe, expect, it } from "vitest";
import { type BuyingChoices, compareGardenBuying } from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { cents, gardenNeed } from "./bill.ts";

const garden = {
  beds: "bed,length,width\nA,8 ft,4 ft",
  yards: "yard,trip_cost,tax\nAlder,6,6 %\nBirch,11.50,6 %",
  prices: "yard,item,size,price\nAlder,2x12 treated,8 ft,21.40\nBirch,2x12 treated,8 ft,20.75",
};

async function compared(texts: Partial<typeof garden>, choices: Partial<BuyingChoices> = {}) {
  const need = gardenNeed({ ...garden, ...texts });
  return compareGardenBuying(need, { ...choices, solve: await solver() });
}

describe("compareGardenBuying(need, options)", () => {
  // By hand, as for the bill. Alder: 3 x 21.40 = 64.20, tax 3.85, trip 6: 74.05. Birch: 62.25, tax
  // 3.74 (3.735), trip 11.50: 77.49. A fourth at Alder: 85.60, tax 5.14 (5.136), trip 6: 96.74.
  it("says what the other yards cost, and a spare board", async () => {
    const rows = await compared({});
    const row = (choice: string) => {
      const { total, more } = rows.find((each) => each.choice === choice) ?? {};
      return [total && cents(total), more && cents(more)];
    };
    expect(row("this plan")).toEqual([7405, 0]);
    expect(row("all at Alder")).toEqual([7405, 0]);
    expect(row("all at Birch")).toEqual([7749, 344]);
    expect(row("with spare boards")).toEqual([9674, 2269]);
  });

  it("starts from the main yard that is chosen", async () => {
    const [own, ...others] = await compared({}, { yard: "birch" });
    expect(own?.total && cents(own.total)).toBe(7749);
    const cheapest = others.find(({ choice }) => choice === "cheapest yards");
    expect(cheapest?.more && cents(cheapest.more)).toBe(-344);
  });

  it("is for the beds that can be built", async () => {
    const [own] = await compared({ beds: `${garden.beds}\nLong,18 ft,4 ft` });
    expect(own?.total && cents(own.total)).toBe(7405);
  });
});
