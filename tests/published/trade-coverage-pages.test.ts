// Suppliers' tables of what a cubic yard covers, several, seen but not named.
import { describe, expect, it } from "vitest";
import {
  amount,
  areaCovered,
  cubicFoot,
  cubicYard,
  inch,
  mulchCover,
  squareFoot,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";
import { knownDifference } from "./known-difference.ts";

const inches = (n: number) => times(n, inch);
const covered = (feet3: number, depth: number) =>
  amount(areaCovered(times(feet3, cubicFoot), inches(depth)), squareFoot);

describe("mulch, suppliers' tables", () => {
  it.each([
    [1, "324"],
    [1.5, "216"],
    [2, "162"],
    [3, "108"],
    [4, "81"],
    [5, "64.8"],
  ])("a cubic yard covers at %d in %s ft2 (READ)", (depth, printed) => {
    published(covered(27, depth), printed);
  });

  it("600 ft2 to 2 in take 3.7 yd3 (READ)", () => {
    const cover = mulchCover(times(600, squareFoot), { depth: inches(2) });
    published(amount(cover.volume, cubicYard), "3.7");
  });

  it("a cubic yard covers 325 ft2 at 1 in, in round figures of 5 (READ)", () => {
    published(covered(27, 1), "325", 2.5);
  });

  it("a cubic yard covers 105 to 110 ft2 at 3 in (READ)", () => {
    expect(covered(27, 3)).toBeGreaterThanOrEqual(105);
    expect(covered(27, 3)).toBeLessThanOrEqual(110);
  });

  it("2000 ft2 to 1/4 in are printed as 1.6 yd3 (READ)", () => {
    const cover = mulchCover(times(2000, squareFoot), { depth: inches(0.25) });
    const reason = "worked with 0.0031 for 1/324 and rounded up: it is 1.54";
    knownDifference(amount(cover.volume, cubicYard), "1.6", reason);
  });

  it.each([
    [27, 3, "120", "324 / 3 is 108"],
    [3, 1, "24", "3 ft3 an inch deep are 36 ft2"],
    [2, 1, "16", "2 ft3 an inch deep are 24 ft2"],
  ])("%d ft3 at %d in do not cover %s ft2, as printed (READ)", (feet3, depth, printed, reason) => {
    knownDifference(covered(feet3, depth), printed, reason);
  });
});
