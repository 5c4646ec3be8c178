// Lay and trade reference pages on bags, several, seen but not named.
import { describe, expect, it } from "vitest";
import {
  amount,
  areaCovered,
  bagCount,
  cubicFoot,
  cubicYard,
  inch,
  litre,
  mulchCover,
  squareFoot,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";
import { knownDifference } from "./known-difference.ts";

const feet3 = (n: number) => times(n, cubicFoot);
const covered = (bag: number, depth: number) =>
  amount(areaCovered(feet3(bag), times(depth, inch)), squareFoot);

describe("mulch, lay pages on bags", () => {
  it.each([
    [2, 2, "12"],
    [2, 3, "8"],
    [2, 4, "6"],
    [3, 1, "36"],
    [3, 2, "18"],
    [3, 3, "12"],
    [3, 4, "9"],
    [1, 3, "4"],
  ])(
    "a bag of %d ft3 at %d in covers %s ft2, and one is enough for it (READ)",
    (bag, depth, printed) => {
      published(covered(bag, depth), printed);
      const area = times(Number(printed), squareFoot);
      expect(mulchCover(area, { depth: times(depth, inch), bag: feet3(bag) }).bags).toBe(1);
    },
  );
});

describe("compost, lay pages on bags", () => {
  it.each([
    [1, 27],
    [3, 9],
  ])("bags of %d ft3: %d to a cubic yard (READ)", (bag, count) => {
    expect(bagCount(cubicYard, feet3(bag)).bags).toBe(count);
  });

  it("bags of 40 L: 19 to a cubic yard (READ)", () => {
    published(amount(cubicYard, times(40, litre)), "19");
  });
});

describe("soil, lay pages on bags", () => {
  it.each([
    [1, "50"],
    [0.5, "100"],
  ])("a 3.8 ft3 bale of peat at %d in: printed %s ft2 (READ)", (depth, printed) => {
    const reason = "the bale is pressed: once loosened it makes more than 3.8 ft3";
    knownDifference(covered(3.8, depth), printed, reason);
  });
});
