import { describe, expect, it } from "vitest";
import { foot, inch, ProblemError, times } from "../../../lib/index.ts";
import { rowsFor, sectionEntry } from "../../../notebooks/fields/index.ts";

const refusal = (act: () => unknown): string => {
  try {
    act();
  } catch (error) {
    if (error instanceof ProblemError) return error.message;
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("rows for a table", () => {
  it("writes each field as people type it", () => {
    const section = sectionEntry("2x12").read("2x12");
    if (!section.ok) throw new Error("2x12 is a section");
    const offer = rowsFor("onHand", [
      { section: section.value, length: times(7.5, foot), count: 2, bought: { year: 2014 } },
      { section: "2x10", sound: times(51, inch), lined: true, note: null },
    ]);
    expect(offer.columns).toEqual([
      "section",
      "length",
      "count",
      "bought",
      "sound",
      "lined",
      "note",
    ]);
    expect(offer.rows).toEqual([
      ["2x12", "7 ft 6 in", "2", "2014", "", "", ""],
      ["2x10", "", "", "", "4 ft 3 in", "yes", ""],
    ]);
    expect(rowsFor("onHand", []).rows).toEqual([]);
  });

  it("says which row and field it cannot write", () => {
    const message = refusal(() => rowsFor("onHand", [{ count: 1 }, { count: Number.NaN }]));
    expect(message).toContain("row 2");
    expect(message).toContain("count");
    expect(refusal(() => rowsFor("onHand", [{ count: [1] }]))).toContain("count");
    expect(refusal(() => rowsFor("onHand", 3 as never))).toContain("a list of records");
    expect(refusal(() => rowsFor("onHand", ["2x12"] as never))).toContain("row");
    expect(refusal(() => rowsFor(7 as never, []))).toContain("table");
  });
});
