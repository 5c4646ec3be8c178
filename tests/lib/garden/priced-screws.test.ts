import { describe, expect, it } from "vitest";
import { amount, gardenFasteners, gardenPieces, inch, millimetre } from "../../../lib/index.ts";
import { bed, screws, section, tables } from "./garden.ts";

const chosen = (where: string, items: readonly string[], spec: Parameters<typeof bed>[0] = {}) => {
  const beds = [bed({ timber: "larch", ...spec })];
  const lines = items.map((item) => `A,"${item}",100,9`);
  const prices = tables({ prices: ["yard,item,size,price", ...lines].join("\n") }).prices.rows;
  const made = gardenFasteners(beds, gardenPieces(beds, { prices }).pieces, { screws, prices });
  const use = made.screws.find((one) => one.where === where);
  return {
    screw: use?.choice.screw,
    need: made.needs.find(({ item }) => /screw/.test(item))?.item,
  };
};

describe("screws of the price list", () => {
  it("are taken in millimetres where they are sold so", () => {
    const { screw, need } = chosen("corner plates", [
      "4 x 30 mm screws",
      "4 x 35 mm screws",
      "4 x 60 mm screws",
    ]);
    // Plate 1/8 in and board 1 1/2 in, less 1/8 in: 38.1 mm at most.
    expect(screw && amount(screw.length, millimetre)).toBeCloseTo(35, 2);
    expect(screw && amount(screw.diameter, millimetre)).toBeCloseTo(4, 6);
    expect(need).toBe("35 mm screws");
  });

  // The table of screws in data/ (missouri-st-screws, READ): number 8 is 0.164 in, number 10 0.190 in.
  it("have the diameter of their number", () => {
    const { screw } = chosen("corner plates", ["#8 x 1 1/4 in screws"]);
    expect(screw && amount(screw.diameter, inch)).toBeCloseTo(0.164, 9);
  });

  it("give way to any other screw where none of them fits", () => {
    const { screw } = chosen("stakes", ["1 in screws"], { stakes: 1, section: section("2x12") });
    expect(screw === null || (screw && amount(screw.length, inch) > 2)).toBe(true);
  });
});
