import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { missingRows, withRows } from "../../../notebooks/engine/page/offered-rows.ts";
import type { TableText } from "../../../notebooks/engine/types/index.ts";

const table = (columns: readonly string[], rows: readonly (readonly string[])[]): TableText => ({
  kind: "table",
  name: "kept",
  columns,
  rows,
  decimal: ".",
});

const offered = {
  columns: ["length", "section"],
  rows: [
    ["7 ft", "2x12"],
    ["7 ft", "2x12"],
    ["5 ft", "2x10"],
  ],
};

describe("rows offered to a table", () => {
  it("go to its end, each field under its own column", () => {
    const kept = table(
      ["section", "length", "count"],
      [
        ["2x6", "4 ft", "1"],
        ["", "", ""],
      ],
    );
    expect(withRows(kept, offered).rows).toEqual([
      ["2x6", "4 ft", "1"],
      ["2x12", "7 ft", ""],
      ["2x12", "7 ft", ""],
      ["2x10", "5 ft", ""],
    ]);
  });

  it("bring a column that the table lacks", () => {
    const kept = table(["section"], [["2x6"]]);
    const { columns, rows } = withRows(kept, offered);
    expect(columns).toEqual(["section", "length"]);
    expect(rows[0]).toEqual(["2x6", ""]);
    expect(rows[3]).toEqual(["2x10", "5 ft"]);
  });

  it("are missing as often as the table has fewer of them", () => {
    const kept = table(["section", "length"], [["2x12", " 7 ft"]]);
    expect(missingRows(kept, offered).rows).toEqual([
      ["7 ft", "2x12"],
      ["5 ft", "2x10"],
    ]);
  });

  it("are missing no more once they are added, and what was there is left alone", () => {
    const field = fc.constantFrom("", "a", "b", "7 ft");
    const rows = fc.array(fc.tuple(field, field));
    fc.assert(
      fc.property(rows, rows, (there, more) => {
        const before = table(["section", "length"], there);
        const offer = { columns: ["length", "section"], rows: more };
        const after = withRows(before, missingRows(before, offer));
        expect(
          missingRows(after, offer).rows.filter((row) => row.some((one) => one !== "")),
        ).toEqual([]);
        const kept = withRows(before, { columns: [], rows: [] }).rows;
        expect(after.rows.slice(0, kept.length)).toEqual(kept);
      }),
    );
  });
});
