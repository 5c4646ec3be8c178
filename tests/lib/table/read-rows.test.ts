import { describe, expect, it } from "vitest";
import {
  foot,
  optionalColumn,
  readCount,
  readCsv,
  readLength,
  readRows,
  requiredColumn,
  times,
} from "../../../lib/index.ts";

const columns = {
  bed: requiredColumn((text) => ({ ok: true as const, value: text })),
  length: requiredColumn((text, place) => readLength(text, { ...place, min: foot })),
  count: optionalColumn((text, { path }) => readCount(text, { path, min: 1 })),
};
const read = (text: string) => readRows(readCsv(text, "beds"), columns);
const places = (text: string) => read(text).problems.map(({ code, path }) => [code, ...path]);

describe("readRows(table, columns)", () => {
  it("reads columns in any order, with the row each stands in", () => {
    expect(read("count,length,bed\n2,8 ft,A").rows).toEqual([
      { bed: "A", length: times(8, foot), count: 2, row: 1 },
    ]);
  });

  it("gives bare numbers the unit in the heading, and keeps a unit that was written", () => {
    const lengths = read("bed,length (ft)\nA,8\nB,96 in").rows.map((row) => row.length.si);
    expect(lengths[0]).toBeCloseTo(8 * 0.3048, 12);
    expect(lengths[1]).toBeCloseTo(8 * 0.3048, 12);
  });

  it("refuses a bare number where no unit stands anywhere", () => {
    expect(places("bed,length\nA,8")).toEqual([["wrong-unit", "beds", 1, "length"]]);
  });

  it("says so where the heading's unit is none of the column's kind", () => {
    expect(places("bed,length (lb)\nA,8")).toEqual([["wrong-unit", "beds", 1, "length (lb)"]]);
  });

  it("reads decimal commas where `;` separates", () => {
    expect(read("bed;length\nA;2,4 m").rows[0]?.length.si).toBeCloseTo(2.4, 12);
  });

  it("collects every problem of every row, and goes on with the others", () => {
    const text = "bed,length,count\nA,8 fot,-1\nB,8 ft,2\n,,\nC,1 in,1.5";
    expect(places(text)).toEqual([
      ["unreadable", "beds", 1, "length"],
      ["too-small", "beds", 1, "count"],
      ["too-small", "beds", 4, "length"],
      ["unreadable", "beds", 4, "count"],
    ]);
    expect(read(text).rows.map((row) => row.bed)).toEqual(["B"]);
  });

  it("passes over blank rows and does not count them", () => {
    const reading = read("bed,length,count\n,,\nA,8 ft,\n , ,");
    expect([reading.given, reading.rows.length, reading.rows[0]?.row]).toEqual([1, 1, 2]);
  });

  it("keeps unknown columns with a remark", () => {
    const reading = read("bed,length,colour\nA,8 ft,green");
    expect(reading.problems).toEqual([]);
    expect(reading.remarks.map(({ path }) => path)).toEqual([["beds", "colour"]]);
  });

  it("takes headings in capitals, with blanks or hyphens", () => {
    expect(read("Bed , LENGTH\nA,8 ft").rows.length).toBe(1);
  });

  it("names a column that must be there and is not", () => {
    expect(places("bed,count\nA,1")).toEqual([["missing", "beds", "length"]]);
    expect(read("bed,count\nA,1").rows).toEqual([]);
  });

  it("refuses a column that is there twice", () => {
    expect(places("bed,length,length (ft)\nA,8 ft,9")).toEqual([
      ["duplicate", "beds", "length (ft)"],
    ]);
  });

  it("names what stands beyond the heading, as after a comma in a number", () => {
    expect(places("bed,length\nA,8 ft,x\nB,8 ft")).toEqual([
      ["contradiction", "beds", 1, "column 3"],
    ]);
  });

  it("takes an empty table for one without rows", () => {
    expect(read("")).toMatchObject({ rows: [], given: 0, problems: [], remarks: [] });
  });
});
