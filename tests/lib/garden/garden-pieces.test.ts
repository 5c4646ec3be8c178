import { describe, expect, it } from "vitest";
import { amount, gardenPieces, inch } from "../../../lib/index.ts";
import { bed, section, tables } from "./garden.ts";

const lengths = (pieces: ReturnType<typeof gardenPieces>["pieces"]) =>
  pieces.map((piece) => [piece.part, piece.count, amount(piece.length, inch)]);

describe("gardenPieces(beds, options)", () => {
  // Arithmetic on an outside 4 ft x 8 ft frame of boards 1 1/2 in thick.
  it("lap sides: two at 96 in, two at 45 in", () => {
    expect(lengths(gardenPieces([bed()]).pieces)).toEqual([
      ["side", 2, 96],
      ["end", 2, 45],
    ]);
  });

  it("lap ends: two at 48 in, two at 93 in", () => {
    expect(lengths(gardenPieces([bed({ lap: "ends" })]).pieces)).toEqual([
      ["side", 2, 93],
      ["end", 2, 48],
    ]);
  });

  it("has a cap in the bed's timber where it is priced, else in the only one priced", () => {
    const { rows } = tables({
      prices:
        "yard,item,size,price\nA,2x12 treated,8 ft,21\nA,2x6 cedar,8 ft,9\nA,2x4 treated,8 ft,5\nA,2x4 cedar,8 ft,7",
    }).prices;
    const made = gardenPieces([bed({ timber: "treated", cap: section("2x6"), stakes: 1 })], {
      prices: rows,
    });
    expect(made.pieces.map(({ part, timber }) => [part, timber])).toEqual([
      ["side", "treated"],
      ["end", "treated"],
      ["cap-side", "cedar"],
      ["cap-end", "cedar"],
      ["stake", "treated"],
    ]);
    expect(made.remarks.map(({ text }) => text)).toEqual([
      "2x6 is not priced in treated; taken as cedar.",
    ]);
  });

  it("adds pieces listed by hand, with the only timber priced", () => {
    const { pieces, prices } = tables({
      pieces: "piece,section,length,count\nshelf,2x10,30 in,4",
      prices: "yard,item,size,price\nA,2x10 larch,8 ft,28",
    });
    const made = gardenPieces([], { prices: prices.rows, hand: pieces?.rows ?? [] });
    expect(made.pieces).toMatchObject([
      { name: "shelf", bed: "shelf", part: "other", count: 4, timber: "larch" },
    ]);
  });
});
