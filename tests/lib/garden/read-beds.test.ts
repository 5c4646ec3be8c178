import { describe, expect, it } from "vitest";
import { amount, inch, readBeds, readCsv } from "../../../lib/index.ts";

const read = (text: string) => readBeds(readCsv(text, "beds"));
const places = (text: string) => read(text).problems.map(({ code, path }) => [code, ...path]);

describe("readBeds(table)", () => {
  it("reads every column", () => {
    const text =
      "bed,length,width,count,courses,section,timber,lap,cap,stakes,liner,soil_depth,depth_now,built,east,north,turned\n" +
      "High bed,8 ft,3 ft,1,3,2x10,Larch,ends,2x6,2,yes,26 in,0 in,2014-04,28 ft,-16 ft,no";
    const [bed] = read(text).rows;
    expect(bed).toMatchObject({
      bed: "High bed",
      courses: 3,
      timber: "larch",
      lap: "ends",
      stakes: 2,
      liner: true,
      built: { year: 2014, month: 4 },
      turned: false,
      row: 1,
    });
    expect(bed?.section?.name).toBe("2x10");
    expect(bed?.cap).toMatchObject({ name: "2x6" });
    expect(bed?.soilDepth && amount(bed.soilDepth, inch)).toBe(26);
    expect(bed?.depthNow?.si).toBe(0);
    expect(bed?.north && amount(bed.north, inch)).toBe(-192);
  });

  it("names the beds of a count A-1, A-2, …", () => {
    const reading = read("bed,length,width,count\nA,8 ft,4 ft,3\nB,8 ft,4 ft,");
    expect(reading.rows.map(({ bed, row }) => [bed, row])).toEqual([
      ["A-1", 1],
      ["A-2", 1],
      ["A-3", 1],
      ["B", 2],
    ]);
    expect(reading.given).toBe(4);
  });

  it("leaves blank fields open, and takes the word none for what it says", () => {
    const [blank, none] = read(
      "bed,length,width,cap,stakes,liner\nA,8 ft,4 ft,,,\nB,8 ft,4 ft,none,none,none",
    ).rows;
    expect([blank?.cap, blank?.stakes, blank?.liner]).toEqual([undefined, undefined, undefined]);
    expect([none?.cap, none?.stakes, none?.liner]).toEqual(["none", 0, false]);
  });

  it("keeps names unique, those made by a count included, and names the other row", () => {
    const reading = read("bed,length,width,count\nA,8 ft,4 ft,2\nA-2,8 ft,4 ft,\na-1,8 ft,4 ft,");
    expect(reading.problems.map(({ code, path, also }) => [code, path, also])).toEqual([
      ["duplicate", ["beds", 2, "bed"], [["beds", 1, "bed"]]],
      ["duplicate", ["beds", 3, "bed"], [["beds", 1, "bed"]]],
    ]);
    expect([reading.rows.length, reading.given]).toEqual([2, 4]);
  });

  it("counts a bad row as one bed: 3 of 4", () => {
    const reading = read("bed,length,width,count\nA,8 ft,4 ft,3\nB,8,4 ft,");
    expect([reading.rows.length, reading.given]).toEqual([3, 4]);
  });

  it("reads metric beds with decimal commas", () => {
    const [bed] = read("bed;length;width;section\nA;2,4 m;120 cm;47x225").rows;
    expect([bed?.length.si, bed?.width.si, bed?.section?.name]).toEqual([2.4, 1.2, "47x225"]);
  });

  it("says at which heading, as typed, a field is wrong", () => {
    expect(places("bed,length (ft),width (ft)\nA,0,4")).toEqual([
      ["too-small", "beds", 1, "length (ft)"],
    ]);
  });

  it("refuses a date with day and month in doubt", () => {
    expect(places("bed,length,width,built\nA,8 ft,4 ft,4/5/2026")).toEqual([
      ["unreadable", "beds", 1, "built"],
    ]);
  });

  it("reads no beds from an empty table", () => {
    expect(read("")).toMatchObject({ rows: [], given: 0, problems: [] });
  });
});
