import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  dressedSection,
  inch,
  millimetre,
  readBoardItem,
  readSection,
  type Section,
} from "../../../lib/index.ts";
import { problemsOf, section } from "./make.ts";

const path = ["prices", 3, "item"];
const sizeIn = ({ thickness, width }: Section) => [amount(thickness, inch), amount(width, inch)];
const sizeMm = ({ thickness, width }: Section) => [
  amount(thickness, millimetre),
  amount(width, millimetre),
];

describe("readSection", () => {
  it.each(["2x12", "2×12", "2 x 12", " 2 X 12 ", "12x2"])(
    "reads %s as the nominal 2x12",
    (text) => {
      const read = section(text);
      expect(read.name).toBe("2x12");
      expect(sizeIn(read)).toEqual([1.5, 11.25]);
    },
  );

  it.each([
    ["5/4x6", "5/4x6", 1, 5.5],
    ["1-1/4 x 6", "5/4x6", 1, 5.5],
    ["1 1/4x6", "5/4x6", 1, 5.5],
    ["1x6", "1x6", 0.75, 5.5],
    ["4x4", "4x4", 3.5, 3.5],
    ["6x6", "6x6", 5.5, 5.5],
    ["8x8", "8x8", 7.25, 7.25],
    ["3/4x8", "3/4x8", 0.625, 7.25],
  ])("reads %s with its dressed size", (text, name, thicknessIn, widthIn) => {
    const read = section(text);
    expect(read.name).toBe(name);
    const [thickness, width] = sizeIn(read);
    expect(thickness).toBeCloseTo(thicknessIn, 9);
    expect(width).toBeCloseTo(widthIn, 9);
    expect(section(read.name)).toEqual(read);
  });

  it.each([
    ["47x225", "47x225", 47, 225],
    ["45 mm x 145 mm", "45x145", 45, 145],
    ["4.5 cm x 14.5 cm", "45x145", 45, 145],
    ["195x50", "50x195", 50, 195],
    ["19 x 38 mm", "19x38", 19, 38],
    ["8 mm x 12 mm", "8 mm x 12 mm", 8, 12],
  ])("reads %s as what it measures", (text, name, thicknessMm, widthMm) => {
    const read = section(text);
    expect(read.name).toBe(name);
    expect(read.nominal).toBeNull();
    const [thickness, width] = sizeMm(read);
    expect(thickness).toBeCloseTo(thicknessMm, 9);
    expect(width).toBeCloseTo(widthMm, 9);
    expect(section(name)).toEqual(read);
  });

  it.each(["1.5 in x 11.25 in", '1.5" x 11.25"', "1 1/2 in x 11 1/4 in", "1.5 x 11.25 in"])(
    "reads %s as measured inches",
    (text) => {
      expect(section(text).name).toBe("1.5 in x 11.25 in");
      expect(sizeIn(section(text))).toEqual([1.5, 11.25]);
    },
  );

  it("has one name for every way of writing a measured section", () => {
    const side = fc.integer({ min: 25, max: 300 });
    fc.assert(
      fc.property(side, side, (a, b) => {
        const names = [
          `${a}x${b}`,
          `${b} × ${a}`,
          `${a} mm x ${b} mm`,
          `${a / 10} cm x ${b / 10} cm`,
        ];
        expect(new Set(names.map((text) => section(text).name)).size).toBe(1);
      }),
    );
  });

  it.each([
    ["", "missing"],
    ["   ", "missing"],
    ["two by twelve", "unreadable"],
    ["2x", "unreadable"],
    ["2x12x8", "unreadable"],
    ["2x12 treated", "unreadable"],
    ["-2x12", "unreadable"],
    ["0x12", "unknown"],
    ["2x13", "unknown"],
    ["17x20", "unknown"],
    ["1 mm x 5 mm", "unknown"],
    ["900x900", "unknown"],
    ["2x99999999", "unknown"],
    ["$2 x 12", "unreadable"],
    ["2 gal x 12 gal", "unreadable"],
  ])("refuses “%s”: %s", (text, code) => {
    const read = readSection(text, { path });
    expect(read).toMatchObject({ ok: false, problem: { code, path, received: text } });
  });

  it("refuses what is no text", () => {
    for (const value of [undefined, null, 12, {}]) {
      expect(readSection(value as unknown as string, { path }).ok).toBe(false);
    }
  });
});

describe("readBoardItem", () => {
  it("reads the timber after the section", () => {
    expect(readBoardItem("2x12 Treated", { path })).toMatchObject({
      ok: true,
      value: { section: { name: "2x12" }, timber: "treated" },
    });
    expect(readBoardItem("47x225  scots  pine", { path })).toMatchObject({
      value: { timber: "scots pine", section: { name: "47x225" } },
    });
  });

  it("gives no timber where none is written", () => {
    const read = readBoardItem("2x12", { path });
    expect(read.ok && "timber" in read.value).toBe(false);
  });

  it.each(["compost", "", "2x treated", "2x13 treated", "2x12x8 treated"])(
    "refuses “%s”",
    (text) => {
      expect(readBoardItem(text, { path })).toMatchObject({
        ok: false,
        problem: { path, received: text },
      });
    },
  );
});

describe("dressedSection", () => {
  it("is wider green than dry, and back again", () => {
    const green = dressedSection(section("2x12"), "green");
    expect(sizeIn(green)).toEqual([1.5625, 11.5]);
    expect(dressedSection(green, "dry")).toEqual(section("2x12"));
    expect(readSection("2x12", { path, seasoning: "green" })).toEqual({ ok: true, value: green });
  });

  it("leaves a measured section as it is", () => {
    expect(dressedSection(section("47x225"), "green")).toEqual(section("47x225"));
  });

  it("refuses a nominal size outside the standard, and what is no section", () => {
    const odd = {
      ...section("2x12"),
      nominal: { ...section("2x12").nominal, width: section("47x225").width },
    };
    expect(problemsOf(() => dressedSection(odd as Section, "dry"))).toEqual(["unknown section"]);
    expect(problemsOf(() => dressedSection(undefined as unknown as Section, "dry"))).toEqual([
      "missing section",
    ]);
    expect(problemsOf(() => dressedSection(section("2x12"), "wet" as "dry"))).toEqual([
      "unknown seasoning",
    ]);
  });
});
