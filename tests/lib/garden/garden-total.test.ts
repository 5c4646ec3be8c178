import { describe, expect, it } from "vitest";
import { gardenTotal } from "../../../lib/index.ts";
import { problemsOf } from "../problems.ts";
import { bill } from "./bill.ts";

const beds = "bed,length,width\nA,8 ft,4 ft";
const yards = "yard\nAlder";

describe("gardenTotal(bill)", () => {
  it("is the sum of the receipts: three boards at 21.40", async () => {
    const made = await bill({
      beds,
      yards,
      prices: "yard,item,size,price\nAlder,2x12 treated,8 ft,21.40",
    });
    expect(gardenTotal(made).si).toBe(64.2);
  });

  it("is an error where a section of boards has no price", async () => {
    const made = await bill({
      beds,
      yards,
      prices: "yard,item,size,price\nAlder,2x10 treated,8 ft,21.40",
    });
    expect(problemsOf(() => gardenTotal(made)).map(([code]) => code)).toEqual(["unpriced"]);
  });

  it("is an error where a piece is longer than every board", async () => {
    const made = await bill({
      beds,
      yards,
      prices: "yard,item,size,price\nAlder,2x12 treated,7 ft,21.40",
    });
    expect(problemsOf(() => gardenTotal(made)).map(([code]) => code)).toEqual(["no-fit"]);
  });

  it("is none where something else has no price", async () => {
    const need = { kind: "count", item: "plate", use: "", count: 4, shares: [] } as const;
    const made = await bill(
      { beds, yards, prices: "yard,item,size,price\nAlder,2x12 treated,8 ft,21.40" },
      [need],
    );
    expect(gardenTotal(made).si).toBe(64.2);
  });
});
