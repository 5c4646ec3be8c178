import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  cautionsForOldBoard,
  mayHoldArsenic,
  nailsInOldBoards,
  oldTreatedWood,
} from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { expectBecause, expectWhole } from "./caution-cases.ts";

describe("oldTreatedWood", () => {
  it("keeps the wood out of beds for food", () => {
    expectWhole(oldTreatedWood(), "old-treated-wood");
    expect(oldTreatedWood().advice).toMatch(/out of beds for food.*12 in/);
    expectBecause(oldTreatedWood);
  });
});

describe("nailsInOldBoards", () => {
  it("asks to look for metal before sawing", () => {
    expectWhole(nailsInOldBoards(), "nails-in-old-boards");
    expectBecause(nailsInOldBoards);
  });
});

describe("mayHoldArsenic", () => {
  it("turns at 2004, the first year without arsenic in wood for homes", () => {
    expect(mayHoldArsenic({ treated: true, boughtYear: 2003 })).toBe(true);
    expect(mayHoldArsenic({ treated: true, boughtYear: 2004 })).toBe(false);
  });

  it("takes what nobody knows as the worse", () => {
    expect(mayHoldArsenic({ treated: true })).toBe(true);
    expect(mayHoldArsenic({ treated: null, boughtYear: 1990 })).toBe(true);
    expect(mayHoldArsenic({ treated: null, boughtYear: null })).toBe(false);
  });

  it("never of wood known to be untreated", () => {
    const year = fc.integer({ min: 1800, max: 2200 });
    fc.assert(fc.property(year, (boughtYear) => !mayHoldArsenic({ treated: false, boughtYear })));
  });

  it("refuses facts of the wrong kind", () => {
    expect(refusals(() => mayHoldArsenic(wrong(undefined)))).toEqual(["missing facts"]);
    expect(
      refusals(() => mayHoldArsenic({ treated: wrong("yes"), boughtYear: 20.5, sawn: wrong(1) })),
    ).toEqual(["unknown treated", "unknown sawn", "too-small boughtYear"]);
    expect(refusals(() => mayHoldArsenic({ boughtYear: 2e9 }))).toEqual(["too-large boughtYear"]);
  });
});

describe("cautionsForOldBoard", () => {
  const ids = (facts: Parameters<typeof cautionsForOldBoard>[0]) =>
    cautionsForOldBoard(facts).map(({ id }) => id);

  it("says all that a treated board from 2002 calls for", () => {
    expect(ids({ treated: true, boughtYear: 2002 })).toEqual([
      "old-treated-wood",
      "nails-in-old-boards",
      "sawing-treated-wood",
      "never-burn",
    ]);
  });

  it("says less of newer, untreated or uncut boards", () => {
    expect(ids({ treated: true, boughtYear: 2015, sawn: false })).toEqual(["never-burn"]);
    expect(ids({ treated: false, sawn: false })).toEqual([]);
    expect(ids({ treated: false })).toEqual(["nails-in-old-boards"]);
  });

  it("refuses facts of the wrong kind", () => {
    expect(refusals(() => cautionsForOldBoard(wrong(3)))).toEqual(["unreadable facts"]);
    expect(refusals(() => cautionsForOldBoard({ boughtYear: -4 }))).toEqual([
      "too-small boughtYear",
    ]);
  });
});
