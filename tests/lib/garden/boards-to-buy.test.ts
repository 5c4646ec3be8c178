import { describe, expect, it } from "vitest";
import { amount, boardsToBuy, foot } from "../../../lib/index.ts";
import { bill } from "./bill.ts";

describe("boardsToBuy(bill)", () => {
  it("lists boards by yard, with what they come to", async () => {
    const made = await bill({
      beds: "bed,length,width\nA,8 ft,4 ft",
      yards: "yard\nAlder",
      prices: "yard,item,size,price\nAlder,2x12 treated,8 ft,21.40\nAlder,compost,1 cu ft,5",
    });
    const rows = boardsToBuy(made);
    expect(
      rows.map(({ length, price, total, ...rest }) => [
        rest,
        amount(length, foot),
        price.si,
        total.si,
      ]),
    ).toEqual([[{ yard: "Alder", section: "2x12", timber: "treated", count: 3 }, 8, 21.4, 64.2]]);
  });

  it("keeps sections apart from timbers where sections have blanks in them", async () => {
    const made = await bill({
      beds: "bed,length,width,section\nA,8 ft,4 ft,1.5 in x 11.25 in",
      yards: "yard\nAlder",
      prices: "yard,item,size,price\nAlder,1.5 in x 11.25 in red cedar,8 ft,40",
    });
    expect(boardsToBuy(made).map(({ section, timber }) => [section, timber])).toEqual([
      ["1.5 in x 11.25 in", "red cedar"],
    ]);
  });
});
