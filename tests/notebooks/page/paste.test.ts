import { describe, expect, it } from "vitest";
import { isRange, pasteInto, readClipboard } from "../../../notebooks/engine/page/paste.ts";

const beds = {
  kind: "table" as const,
  name: "beds",
  columns: ["bed", "length", "width", "soil_depth"],
  rows: [
    ["1", "8 ft", "4 ft", ""],
    ["2", "8 ft", "4 ft", ""],
  ],
  decimal: "." as const,
};

describe("readClipboard", () => {
  it("reads rows and fields between tabs", () => {
    expect(readClipboard("1\t8 ft\r\n2\t6 ft\r\n")).toEqual([
      ["1", "8 ft"],
      ["2", "6 ft"],
    ]);
  });

  it("takes quotes as a spreadsheet writes them, and inches as inches", () => {
    expect(readClipboard('"a\tb"\t"say ""8"""\t99.5"\n"two\nlines"\tx')).toEqual([
      ["a\tb", 'say "8"', '99.5"'],
      ["two\nlines", "x"],
    ]);
  });

  it("keeps empty fields and leaves out empty lines at the end", () => {
    expect(readClipboard("1\t\t4 ft\n\t\t\n\n")).toEqual([["1", "", "4 ft"]]);
    expect(readClipboard("1\t\n")).toEqual([["1", ""]]);
  });

  it("knows a range from something for one field", () => {
    expect(isRange("8 ft 3 1/2 in")).toBe(false);
    expect(isRange("8 ft\n")).toBe(false);
    expect(isRange("8 ft\t4 ft")).toBe(true);
    expect(isRange("8 ft\n6 ft")).toBe(true);
  });
});

describe("pasteInto", () => {
  it("fills from the field on, making rows as needed", () => {
    const range = Array.from({ length: 40 }, (_, index) => [`B${index + 1}`, "10 ft"]);
    const { table, rows, beyond } = pasteInto(beds, range, { row: 1, column: 0 });
    expect(rows).toBe(40);
    expect(beyond).toBe(0);
    expect(table.rows).toHaveLength(41);
    expect(table.rows[0]).toEqual(["1", "8 ft", "4 ft", ""]);
    expect(table.rows[1]).toEqual(["B1", "10 ft", "4 ft", ""]);
    expect(table.rows[40]).toEqual(["B40", "10 ft", "", ""]);
    expect(beds.rows).toHaveLength(2);
  });

  it("puts fields under their own headings, in whatever order and spelling they come", () => {
    const range = [
      ["Width", "Soil depth (in)", "BED", "note"],
      ["3 ft", "9.5", "7", "by the gate"],
    ];
    const { table, headings, rows } = pasteInto(beds, range, { row: 2, column: 3 });
    expect(headings).toBe(true);
    expect(rows).toBe(1);
    expect(table.columns).toEqual(["bed", "length", "width", "soil_depth", "note"]);
    expect(table.rows[2]).toEqual(["7", "", "3 ft", "9.5 in", "by the gate"]);
    expect(table.rows[0]).toEqual(["1", "8 ft", "4 ft", "", ""]);
  });

  it("leaves nothing of the rows that rows with headings replace", () => {
    const seated = { ...beds, columns: ["bed", "length", "cap"], rows: [["1", "8 ft", "2x6"]] };
    const range = [
      ["bed", "length"],
      ["D2", "6 ft"],
    ];
    const { table } = pasteInto(seated, range, { row: 0, column: 0 });
    expect(table.rows).toEqual([["D2", "6 ft", ""]]);
    // Without headings the fields beside those that are pasted are the reader's own.
    expect(pasteInto(seated, [["D2", "6 ft"]], { row: 0, column: 0 }).table.rows[0]?.[2]).toBe(
      "2x6",
    );
  });

  it("does not take a row for headings", () => {
    const { headings, table } = pasteInto(beds, [["5", "6 ft"]], { row: 0, column: 0 });
    expect(headings).toBe(false);
    expect(table.rows[0]).toEqual(["5", "6 ft", "4 ft", ""]);
  });

  it("counts what stands beyond the last column instead of losing it in silence", () => {
    const { beyond } = pasteInto(beds, [["4 ft", "9 in", "x", ""]], { row: 0, column: 2 });
    expect(beyond).toBe(1);
  });

  it("leaves no hole above a paste", () => {
    const empty = { ...beds, rows: [] };
    expect(pasteInto(empty, [["5"]], { row: 2, column: 0 }).table.rows).toEqual([
      ["", "", "", ""],
      ["", "", "", ""],
      ["5", "", "", ""],
    ]);
  });

  it("gives a field that has its own unit no other", () => {
    const range = [
      ["bed", "length (in)"],
      ["9", "8 ft"],
      ["10", "99 1/2"],
    ];
    const { table } = pasteInto(beds, range, { row: 0, column: 0 });
    expect(table.rows.map((row) => row[1])).toEqual(["8 ft", "99 1/2 in"]);
  });
});
