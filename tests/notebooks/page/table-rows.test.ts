import { describe, expect, it } from "vitest";
import {
  countRows,
  headingWords,
  inKnownOrder,
  isFigures,
  withoutBlankEnd,
} from "../../../notebooks/engine/page/table-rows.ts";

const problem = (row: number | undefined, column: string, code: string) => ({
  row,
  column,
  code,
  sentence: "",
});

describe("rows of a table", () => {
  it("counts filled rows and says why others are left out, in their order", () => {
    const rows = [
      ["1", "8 ft"],
      ["2", "6 fot"],
      ["2", "6 ft"],
      ["", ""],
    ];
    const problems = [
      problem(3, "bed", "duplicate"),
      problem(2, "length", "unreadable"),
      problem(2, "width", "missing"),
      problem(undefined, "beds", "missing"),
    ];
    expect(countRows(rows, problems)).toEqual({
      counted: 1,
      filled: 3,
      left: [
        { row: 2, why: "length not read" },
        { row: 3, why: "bed given twice" },
      ],
    });
  });

  it("drops empty rows at the end only", () => {
    expect(withoutBlankEnd([[""], ["1"], [" "], [""]])).toEqual([[""], ["1"]]);
    expect(withoutBlankEnd([[""]])).toEqual([]);
  });

  it("makes words of headings", () => {
    expect(headingWords("soil_depth (in)")).toBe("Soil depth (in)");
    expect(headingWords("tripCost")).toBe("Trip cost");
    expect(headingWords("bed")).toBe("Bed");
  });

  it("sets figures right, names and sections left", () => {
    const rows = [["1", "8 ft", "2x12", "$4.20", ""]];
    expect([0, 1, 2, 3, 4].map((column) => isFigures(rows, column))).toEqual([
      false,
      true,
      false,
      true,
      false,
    ]);
  });

  it("brings a file's columns into the document's order and keeps the rest", () => {
    const opened = {
      kind: "table" as const,
      name: "beds",
      columns: ["Width (in)", "note", "bed"],
      rows: [["48", "n", "1"]],
      decimal: "." as const,
    };
    const { columns, rows } = inKnownOrder(opened, ["bed", "length", "width"]);
    expect(columns).toEqual(["bed", "length", "Width (in)", "note"]);
    expect(rows).toEqual([["1", "", "48", "n"]]);
  });
});
