import { describe, expect, it } from "vitest";
import { amount, inch, readCsv, readOnHand } from "../../../lib/index.ts";

const read = (text: string) => readOnHand(readCsv(text, "onHand"));

describe("readOnHand(table)", () => {
  it("takes the whole length for sound where nothing else is written, and one board", () => {
    const [board] = read("section,length\n2x12,7 ft 4 in").rows;
    expect(board && [amount(board.sound, inch), board.count]).toEqual([88, 1]);
  });

  it("reads the length that is left once bad ends are off", () => {
    const [board] = read(
      "section,length,sound,count,timber,bought\n2x12,5 ft,4 ft 9 in,2,Treated,2015",
    ).rows;
    expect(board && amount(board.sound, inch)).toBe(57);
    expect(board).toMatchObject({ count: 2, timber: "treated", bought: { year: 2015 }, row: 1 });
  });

  it("refuses more sound length than there is, and names both fields", () => {
    const { problems, rows } = read("section,length,sound\n2x12,5 ft,6 ft\n2x12,5 ft,5 ft");
    expect(problems.map(({ code, path, also }) => [code, path, also])).toEqual([
      ["contradiction", ["onHand", 1, "sound"], [["onHand", 1, "length"]]],
    ]);
    expect(rows.length).toBe(1);
  });
});
