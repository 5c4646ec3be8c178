import { describe, expect, it } from "vitest";
import { amount, inch, readCsv, readPieces } from "../../../lib/index.ts";

describe("readPieces(table)", () => {
  it("reads pieces listed by hand", () => {
    const { rows } = readPieces(
      readCsv(
        "piece,section,length,count,timber\nshelf,2x10,30 1/2 in,4,Cedar\nleg,4x4,2 ft,,",
        "pieces",
      ),
    );
    expect(rows.map(({ piece, count, timber }) => [piece, count, timber])).toEqual([
      ["shelf", 4, "cedar"],
      ["leg", 1, undefined],
    ]);
    expect(rows[0] && amount(rows[0].length, inch)).toBe(30.5);
  });
});
