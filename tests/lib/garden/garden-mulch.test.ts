import { describe, expect, it } from "vitest";
import { amount, cubicFoot, gardenMulch, inch, times } from "../../../lib/index.ts";
import { bed, material } from "./garden.ts";

const bark = { material: material("pine bark") };

describe("gardenMulch(beds, choices)", () => {
  it("covers the inside of all beds: 93 in x 45 in x 1 in is 2.42 cu ft", () => {
    const made = gardenMulch([bed(), bed({ bed: "B" })], bark);
    expect(amount(made.volume, cubicFoot)).toBeCloseTo((2 * 93 * 45) / 1728, 10);
    expect(made.beds.map(({ bed: name }) => name)).toEqual(["A", "B"]);
    expect(made.needs[0]).toMatchObject({ item: "pine bark", use: "mulch" });
  });

  it("grows with the depth and is nothing at none", () => {
    const at = (depth: number) =>
      gardenMulch([bed()], { ...bark, depth: times(depth, inch) }).volume.si;
    expect(at(3)).toBeCloseTo(3 * at(1), 12);
    expect(at(0)).toBe(0);
  });
});
