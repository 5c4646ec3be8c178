import { describe, expect, it } from "vitest";
import { amount, foot, inch, type Length, millimetre, times, toBed } from "../../../lib/index.ts";
import { problemsOf } from "../problems.ts";
import { bed, feet, section } from "./garden.ts";

const inches = (length: Length) => amount(length, inch);

describe("toBed(spec, choices)", () => {
  it("has the wall as high as its courses: 2x12 is 11 1/4 in dressed (PS 20), three 2x10 are 27 3/4 in", () => {
    expect(inches(bed().wallHeight)).toBe(11.25);
    expect(inches(bed({ section: section("2x10"), courses: 3 }).wallHeight)).toBe(27.75);
  });

  it("has green boards wider: 11 1/2 in (PS 20)", () => {
    expect(inches(bed({}, { seasoning: "green" }).wallHeight)).toBe(11.5);
  });

  // The rules of the table of beds, common practice: 1 in for bark and 1 in free; 2 in settled.
  it("wants soil to 2 in under the rim where nothing is said", () => {
    expect(inches(bed().soilDepth)).toBe(9.25);
    expect(inches(bed({ soilDepth: times(20, inch) }).soilDepth)).toBe(20);
  });

  it("takes a bed with a year built to lack 2 in, and says so", () => {
    const old = bed({ built: { year: 2014 } });
    expect(inches(old.depthNow)).toBe(7.25);
    expect(old.assumed.length).toBe(1);
    expect(old.assumed[0]).toContain("7 1/4 in");
  });

  it("takes a bed without a year for empty, and a depth that was measured for what it is", () => {
    expect(bed().depthNow.si).toBe(0);
    const measured = bed({ built: { year: 2014 }, depthNow: times(6.5, inch) });
    expect([inches(measured.depthNow), measured.assumed]).toEqual([6.5, []]);
    expect(bed({ built: { year: 2014 }, depthNow: times(0, inch) }).depthNow.si).toBe(0);
  });

  it("assumes no less than nothing in a shallow bed", () => {
    const shallow = bed({ built: { year: 2014 }, soilDepth: times(1, inch) });
    expect(shallow.depthNow.si).toBe(0);
  });

  it("lets a filled field win over the choice, zero and none included", () => {
    const choices = {
      cap: section("2x6"),
      stakes: 2,
      liner: true,
      courses: 3,
      lap: "ends",
    } as const;
    const kept = bed({}, choices);
    expect([kept.cap?.name, kept.stakes, kept.liner, kept.courses, kept.lap]).toEqual([
      "2x6",
      2,
      true,
      3,
      "ends",
    ]);
    const won = bed({ cap: "none", stakes: 0, liner: false, courses: 1, lap: "sides" }, choices);
    expect([won.cap, won.stakes, won.liner, won.courses, won.lap]).toEqual([
      null,
      0,
      false,
      1,
      "sides",
    ]);
  });

  it("is on the plan only where both corners are known", () => {
    expect(bed().place).toBeUndefined();
    expect(bed({ east: feet(1) }).place).toBeUndefined();
    expect(bed({ east: feet(1), north: feet(2) }).place).toEqual({
      east: feet(1),
      north: feet(2),
      turned: false,
    });
  });

  it("keeps a metric section as it measures", () => {
    const metric = bed({ section: section("47x225") });
    expect(amount(metric.wallHeight, millimetre)).toBe(225);
  });

  it.each([
    [{ width: times(1, inch) }, "contradiction", ["A", "width"]],
    [{ courses: 0 }, "too-small", ["A", "courses"]],
    [{ courses: 11 }, "too-large", ["A", "courses"]],
    [{ length: feet(-8) }, "too-small", ["A", "length"]],
    [{ length: feet(1e6) }, "too-large", ["A", "length"]],
    [{ section: section("1x2") }, "contradiction", ["A", "section"]],
  ])("refuses %o", (spec, code, path) => {
    const problems = problemsOf(() =>
      toBed({ bed: "A", length: times(8, foot), width: feet(4), ...spec }),
    );
    expect(problems).toContainEqual([code, path]);
  });
});
