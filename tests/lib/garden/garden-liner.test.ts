import { describe, expect, it } from "vitest";
import { amount, foot, gardenLiner, inch, squareFoot } from "../../../lib/index.ts";
import { bed, feet, tables } from "./garden.ts";

const prices = (lines: string) => tables({ prices: `yard,item,size,price\n${lines}` }).prices.rows;

describe("gardenLiner(beds, choices)", () => {
  it("lines only the beds that are lined", () => {
    const made = gardenLiner([bed(), bed({ bed: "B", liner: false })]);
    expect(made.lined).toEqual(["A"]);
    expect(made.needs.map(({ item }) => item)).toEqual(["liner", "staples"]);
  });

  // By hand: inside 93 in x 45 in, once round 276 in and one lap of 12 in.
  it("takes once round the inside and a lap", () => {
    expect(amount(gardenLiner([bed()]).sheetLength, inch)).toBeCloseTo(288, 9);
  });

  it("takes the priced roll that costs least for all", () => {
    const rolls = prices("A,liner,2 ft x 50 ft,30\nA,liner,6 ft x 100 ft,84\nB,tarp,9 ft x 9 ft,1");
    const one = gardenLiner([bed()], { prices: rolls });
    expect([amount(one.roll.width, foot), one.rolls]).toEqual([2, 1]);
    const many = gardenLiner(
      Array.from({ length: 8 }, (_, index) => bed({ bed: `B${index}` })),
      { prices: rolls },
    );
    expect(amount(many.roll.width, foot)).toBe(6);
  });

  it("covers the floor where that is asked for", () => {
    const made = gardenLiner([bed({ liner: false })], { floor: "mesh" });
    expect(amount(made.floorArea, squareFoot)).toBeCloseTo((93 * 45) / 144, 10);
    expect(made.needs.map(({ kind, item }) => [kind, item])).toEqual([["floor", "wire mesh"]]);
    expect(gardenLiner([bed()]).floorArea.si).toBe(0);
  });

  it("gives beds that are built alike one group", () => {
    const made = gardenLiner([bed(), bed({ bed: "B", length: feet(12) }), bed({ bed: "C" })]);
    expect(made.beds.map(({ name, count }) => [name, count])).toEqual([
      ["A, C", 2],
      ["B", 1],
    ]);
  });

  it("is nothing for no beds", () => {
    expect(gardenLiner([])).toMatchObject({ rolls: 0, needs: [] });
  });
});
