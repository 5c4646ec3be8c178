import { describe, expect, it } from "vitest";
import { amount, boardMass, kilogram, money, pound } from "../../../lib/index.ts";
import { feet, problemsOf, section } from "./make.ts";

const pine = { species: "loblolly pine", specificGravity: 0.47 };

describe("boardMass", () => {
  // 38.1 mm x 285.75 mm x 2.4384 m at 586 kg/m3 (loblolly pine at 19 %), by hand.
  it("is the measured volume times density", () => {
    const mass = boardMass(section("2x12"), feet(8), { species: pine });
    expect(amount(mass, kilogram)).toBeCloseTo(0.0381 * 0.28575 * 2.4384 * 586, 1);
  });

  it("is more for a wet board, and counts boards", () => {
    const mass = (moisture: number, count = 1) =>
      amount(boardMass(section("2x12"), feet(8), { species: pine, moisture, count }), pound);
    expect(mass(0.81)).toBeGreaterThan(mass(0.19));
    expect(mass(0.19, 3)).toBeCloseTo(3 * mass(0.19), 9);
    expect(mass(0.19, 0)).toBe(0);
    expect(mass(0)).toBeGreaterThan(0);
  });

  it.each([
    ["no section", [undefined, feet(8), { species: pine }], ["missing section"]],
    [
      "no species",
      [section("2x12"), feet(8), {}],
      ["missing species", "missing species.specificGravity"],
    ],
    ["no options", [section("2x12"), feet(8), undefined], ["missing options"]],
    ["a bare length", [section("2x12"), 8, { species: pine }], ["wrong-unit length"]],
    ["money", [section("2x12"), money(8), { species: pine }], ["wrong-unit length"]],
    ["a negative length", [section("2x12"), feet(-8), { species: pine }], ["too-small length"]],
    [
      "percents",
      [section("2x12"), feet(8), { species: pine, moisture: 19 }],
      ["too-large moisture"],
    ],
    [
      "half a board",
      [section("2x12"), feet(8), { species: pine, count: 0.5 }],
      ["unreadable count"],
    ],
  ])("refuses %s", (_, given, problems) => {
    const [sec, length, options] = given as Parameters<typeof boardMass>;
    expect(problemsOf(() => boardMass(sec, length, options))).toEqual(problems);
  });
});
