import { describe, expect, it } from "vitest";
import { billRows, gardenTotal, type Money } from "../../../lib/index.ts";
import { bill, cents } from "./bill.ts";
import { american } from "./garden.ts";

describe("billRows(bill)", () => {
  it("adds up to the total, like a receipt", async () => {
    const made = await bill(american);
    const totals = billRows(made)
      .map((row) => row.total)
      .filter((total): total is Money => total !== "no price");
    expect(totals.reduce((sum, total) => sum + cents(total), 0)).toBe(cents(gardenTotal(made)));
  });

  it("keeps what has no price, with its quantity", async () => {
    const need = { kind: "count", item: "plate", use: "corners", count: 4, shares: [] } as const;
    const rows = billRows(await bill({ yards: "yard\nAlder" }, [need]));
    expect(rows).toEqual([
      {
        yard: "",
        item: "plate",
        use: "corners",
        size: null,
        count: 4,
        price: null,
        total: "no price",
      },
    ]);
  });

  it("has no row for a tax that is in the prices", async () => {
    const made = await bill(
      {
        beds: "bed,length,width\nA,8 ft,4 ft",
        yards: "yard,tax\nErle,19 %",
        prices: "yard,item,size,price\nErle,2x12 treated,8 ft,€20",
      },
      [],
      { taxIncluded: true },
    );
    expect(billRows(made).map(({ item }) => item)).toEqual(["2x12 treated"]);
  });
});
