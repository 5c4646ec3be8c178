import { describe, expect, it } from "vitest";
import {
  foot,
  inch,
  money,
  pound,
  requireChoice,
  requireCount,
  requireMoney,
  requireNumber,
  requireQuantity,
  requireText,
  sentence,
  times,
} from "../../../lib/index.ts";
import { codesOf, thrownBy } from "./generators.ts";

const path = ["bed", "depth"];
const at = "at bed.depth";

describe("requireQuantity", () => {
  it("gives back what is right, clones and bounds included", () => {
    const bounds = { min: times(0, inch), max: foot };
    expect(requireQuantity(inch, "length", path, bounds)).toBe(inch);
    expect(requireQuantity(foot, "length", path, bounds)).toBe(foot);
    expect(requireQuantity(times(0, inch), "length", path, bounds).si).toBe(0);
    expect(requireQuantity(JSON.parse(JSON.stringify(foot)), "length", path).si).toBe(0.3048);
    expect(
      requireQuantity(times(12, inch), "length", path, { min: foot, max: foot }).si,
    ).toBeCloseTo(0.3048, 12);
  });

  it("refuses everything else by its kind of fault", () => {
    const refused: [unknown, string][] = [
      [undefined, "missing"],
      [null, "missing"],
      [12, "wrong-unit"],
      [pound, "wrong-unit"],
      ["1 ft", "unreadable"],
      [{}, "unreadable"],
      [[], "unreadable"],
      [Number.NaN, "unreadable"],
      [{ ...foot, si: Number.NaN }, "unreadable"],
      [{ ...foot, si: Number.POSITIVE_INFINITY }, "unreadable"],
      [times(-1, inch), "too-small"],
      [times(2, foot), "too-large"],
    ];
    for (const [value, code] of refused) {
      const check = () =>
        requireQuantity(value, "length", path, { min: times(0, inch), max: foot });
      expect(codesOf(check), String(code)).toEqual([`${code} ${at}`]);
    }
  });

  it("says what was received and what is allowed, with units", () => {
    const [problem] = thrownBy(() =>
      requireQuantity(times(2, foot), "length", path, { min: inch, max: foot }),
    );
    expect(problem && sentence(problem)).toBe(
      "bed, depth: “2 ft” is too large; allowed is a length from 1 in to 1 ft. Give at most 1 ft.",
    );
    const [bare] = thrownBy(() => requireQuantity(12, "length", path));
    expect(bare && sentence(bare)).toContain("“12” is of another kind or has no unit");
  });
});

describe("requireMoney", () => {
  it("takes money of any currency, within bounds", () => {
    expect(requireMoney(money(0), path, { min: money(0) }).si).toBe(0);
    expect(codesOf(() => requireMoney(money(-1, "EUR"), path, { min: money(0) }))).toEqual([
      `too-small ${at}`,
    ]);
    expect(codesOf(() => requireMoney(5, path))).toEqual([`wrong-unit ${at}`]);
    expect(codesOf(() => requireMoney(foot, path))).toEqual([`wrong-unit ${at}`]);
    expect(codesOf(() => requireMoney(undefined, path))).toEqual([`missing ${at}`]);
  });
});

describe("requireNumber and requireCount", () => {
  it("give back what is right", () => {
    expect(requireNumber(0, path, { min: 0 })).toBe(0);
    expect(requireNumber(-0.5, path)).toBe(-0.5);
    expect(requireCount(0, path)).toBe(0);
    expect(requireCount(3, path, { min: 3, max: 3 })).toBe(3);
    expect(requireCount(-2, path, { min: -2 })).toBe(-2);
  });

  it("refuse everything else", () => {
    const refused: [unknown, string][] = [
      [undefined, "missing"],
      [null, "missing"],
      [foot, "wrong-unit"],
      ["3", "unreadable"],
      [true, "unreadable"],
      [Number.NaN, "unreadable"],
      [Number.POSITIVE_INFINITY, "unreadable"],
      [-1, "too-small"],
      [11, "too-large"],
    ];
    for (const [value, code] of refused) {
      const bounds = { min: 0, max: 10 };
      expect(codesOf(() => requireNumber(value, path, bounds))).toEqual([`${code} ${at}`]);
      expect(codesOf(() => requireCount(value, path, bounds))).toEqual([`${code} ${at}`]);
    }
    expect(codesOf(() => requireCount(1.5, path))).toEqual([`unreadable ${at}`]);
    expect(codesOf(() => requireCount(-1, path))).toEqual([`too-small ${at}`]);
    expect(codesOf(() => requireNumber(0, path, { above: 0 }))).toEqual([`too-small ${at}`]);
    expect(codesOf(() => requireCount(-1, path, { above: -1 }))).toEqual([`too-small ${at}`]);
    expect(codesOf(() => requireNumber(1, path, { below: 1 }))).toEqual([`too-large ${at}`]);
  });
});

describe("requireText and requireChoice", () => {
  it("give back what is right", () => {
    expect(requireText("A-1", path)).toBe("A-1");
    expect(requireChoice("ends", ["sides", "ends"], path)).toBe("ends");
    expect(requireChoice(false, [true, false], path)).toBe(false);
  });

  it("refuse everything else, naming the choices", () => {
    expect(codesOf(() => requireText(" ", path))).toEqual([`missing ${at}`]);
    expect(codesOf(() => requireText(undefined, path))).toEqual([`missing ${at}`]);
    expect(codesOf(() => requireText(3, path))).toEqual([`unreadable ${at}`]);
    expect(codesOf(() => requireChoice(undefined, ["a"], path))).toEqual([`missing ${at}`]);
    const [problem] = thrownBy(() => requireChoice("corner", ["sides", "ends"], path));
    expect(problem).toEqual({
      code: "unknown",
      path,
      allowed: "one of sides, ends",
      received: "corner",
      remedy: "Choose one of sides, ends.",
    });
  });
});
