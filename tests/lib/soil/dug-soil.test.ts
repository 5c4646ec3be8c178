import { describe, expect, it } from "vitest";
import { bedVolume, dugSoil, foot, inch, times } from "../../../lib/index.ts";
import { bedOf, refusals, wrong } from "./at-hand.ts";

const earth = { soil: "common earth", bankToLoose: 1.25, bankToCompacted: 0.9 };
const depth = times(9, inch);

describe("dugSoil", () => {
  it("swells what lay inside the boards", () => {
    const dug = dugSoil(bedOf(96, 48), earth, { depth, count: 3 });
    expect(dug.inPlace.si).toBeCloseTo(3 * bedVolume(bedOf(96, 48), depth).si, 12);
    expect(dug.loose.si).toBeCloseTo(1.25 * dug.inPlace.si, 12);
  });

  it("carries the caution of lead where old soil is dug, and none where none is", () => {
    const ids = (inches: number) =>
      dugSoil(bedOf(96, 48), earth, { depth: times(inches, inch) }).cautions.map(({ id }) => id);
    expect(ids(9)).toEqual(["lead-in-old-soil"]);
    expect(ids(0)).toEqual([]);
  });

  it("refuses beds, rows and depths that cannot be", () => {
    expect(refusals(() => dugSoil(wrong(1), earth, { depth }))).toContain("unreadable bed");
    expect(refusals(() => dugSoil(bedOf(96, 48), wrong({}), { depth }))).toEqual([
      "missing soil.bankToLoose",
      "missing soil.bankToCompacted",
    ]);
    expect(
      refusals(() => dugSoil(bedOf(-1, 48), earth, { depth: times(99, foot), count: -2 })),
    ).toEqual(["too-small bed.length", "too-large depth", "too-small count"]);
    expect(refusals(() => dugSoil(bedOf(96, 48), earth, wrong({ depth: 9 })))).toEqual([
      "wrong-unit depth",
    ]);
  });
});
