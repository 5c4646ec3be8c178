import { describe, expect, it } from "vitest";
import { amount, cutRows, inch } from "../../../lib/index.ts";
import { bill } from "./bill.ts";

describe("cutRows(plan, options)", () => {
  const garden = {
    beds: "bed,length,width\nA,8 ft,4 ft",
    yards: "yard\nAlder",
    prices: "yard,item,size,price\nAlder,2x12 treated,8 ft,21.40",
    onHand: "section,length,count,timber\n2x12,4 ft,2,treated",
  };

  it("has one row for every board used, kept ones too", async () => {
    const { boards } = await bill(garden);
    const rows = cutRows(boards);
    expect(rows.map(({ source }) => source).sort()).toEqual(["Alder", "Alder", "kept", "kept"]);
    expect(rows.every(({ section, timber }) => section === "2x12" && timber === "treated")).toBe(
      true,
    );
    for (const row of rows) {
      // Boards are as long as pieces, cuts and offcut together; a cut takes 1/8 in.
      expect(amount(row.offcut, inch)).toBeGreaterThanOrEqual(0);
      expect(amount(row.offcut, inch)).toBeLessThan(amount(row.length, inch));
    }
  });

  it("names each piece with its length, in the system asked for", async () => {
    const { boards } = await bill(garden);
    expect(cutRows(boards).some(({ pieces }) => pieces === "A end 3 ft 9 in")).toBe(true);
    expect(
      cutRows(boards, { system: "metric" }).some(({ pieces }) =>
        /A end [\d.,]+ (m|cm|mm)$/.test(pieces),
      ),
    ).toBe(true);
  });

  it("is empty where there is no plan", () => {
    expect(cutRows(null)).toEqual([]);
  });
});
