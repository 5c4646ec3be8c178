import { describe, expect, it } from "vitest";
import { pound, staples } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { feet, inches } from "./frames.ts";

describe("staples", () => {
  it("is one for each spacing round the bed, begun ones whole", () => {
    expect(staples(feet(23))).toBe(23);
    expect(staples(feet(23), { spacing: inches(8) })).toBe(35);
    expect(staples(feet(23), { spacing: inches(8), rows: 2 })).toBe(70);
  });

  it("refuses what is no perimeter, spacing or number of rows", () => {
    expect(refusals(() => staples(wrong(23)))).toEqual(["wrong-unit perimeter"]);
    expect(refusals(() => staples(wrong(undefined)))).toEqual(["missing perimeter"]);
    expect(refusals(() => staples(feet(1e6), { spacing: inches(0), rows: 0 }))).toEqual([
      "too-large perimeter",
      "too-small spacing",
      "too-small rows",
    ]);
    expect(refusals(() => staples(feet(23), { spacing: wrong(pound), rows: 1.5 }))).toEqual([
      "wrong-unit spacing",
      "unreadable rows",
    ]);
    expect(refusals(() => staples(feet(23), wrong(12)))).toEqual(["unreadable options"]);
  });
});
