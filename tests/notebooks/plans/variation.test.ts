import { describe, expect, it } from "vitest";
import { type Variation, variationOf, variedEntry } from "../../../notebooks/engine/plans/index.ts";
import type { EntryKind, ShownEntry } from "../../../notebooks/engine/types/index.ts";

const shown = (entry: EntryKind, text: string, more: Partial<ShownEntry> = {}): ShownEntry => ({
  entry,
  initial: text,
  text,
  ...more,
});

function firsts(variation: Variation): readonly [string | undefined, string | undefined] {
  if (variation.by !== "range") throw new Error(`varied by ${variation.by}`);
  return [variation.low[0], variation.high[0]];
}

describe("a fifth under and over, worked by hand", () => {
  it.each([
    ["length", "8 ft", "6.4 ft", "9.6 ft"],
    ["length", "13 1/2 in", "10.8 in", "16.2 in"],
    ["length", "1/8 in", "0.1 in", "0.15 in"],
    ["length", "8' 3\"", "79.2 in", "118.8 in"],
    ["length", "8 ft 3 in", "79.2 in", "118.8 in"],
    ["length", "240 cm", "192 cm", "288 cm"],
    ["volume", "0.75 cu ft", "0.6 cu ft", "0.9 cu ft"],
    ["volume", "1.5 m3", "1.2 m3", "1.8 m3"],
    ["mass", "1,200 lb", "960 lb", "1440 lb"],
    ["money", "$21.40", "$17.12", "$25.68"],
    ["money", "21.40", "17.12", "25.68"],
    ["money", "€12", "€9.60", "€14.40"],
    ["money", "6.00", "4.80", "7.20"],
    ["percent", "6 %", "4.8 %", "7.2 %"],
    ["number", "0.75", "0.6", "0.9"],
    ["number", "-2", "-2.4", "-1.6"],
  ] as const)("%s %s", (kind, text, low, high) => {
    expect(firsts(variationOf(shown(kind, text), 0.2))).toEqual([low, high]);
  });
});

describe("where the entry refuses that", () => {
  it("tries the nearest whole number, at least one away, then the limit as the entry says it", () => {
    const count = shown("number", "2", { limits: "1 to 6" });
    expect(variationOf(count, 0.2)).toEqual({
      by: "range",
      low: ["1.6", "1"],
      high: ["2.4", "3", "6"],
    });
    const twelve = shown("number", "12", { limits: "at most 20, or none" });
    expect(variationOf(twelve, 0.2)).toEqual({
      by: "range",
      low: ["9.6", "10"],
      high: ["14.4", "14", "20"],
    });
  });

  it("never tries the text that is there", () => {
    const least = shown("length", "1/16 in", { limits: "1/16 in to 6 in" });
    const { low, high } = variationOf(least, 0.5) as Extract<Variation, { by: "range" }>;
    expect(low).not.toContain("1/16 in");
    expect(high.at(-1)).toBe("6 in");
  });
});

describe("choices", () => {
  it("are every other option", () => {
    const options = ["sides", "ends", "mitred"].map((text) => ({ text, label: `${text} run` }));
    expect(variationOf(shown("choice", "Ends ", { options }), 0.2)).toEqual({
      by: "options",
      options: [options[0], options[2]],
    });
    expect(variationOf(shown("yes-no", "yes"), 0.2)).toEqual({
      by: "options",
      options: [{ text: "no", label: "no" }],
    });
  });
});

describe("what is not varied says why", () => {
  it.each([
    ["date", "2026-04-25", "date"],
    ["text", "2x12", "words"],
    ["length", "none", "no figure"],
    ["length", "", "no figure"],
    ["length", "0 in", "0"],
    ["length", "2 m and a bit 3", "more than one figure"],
    ["number", "3,5", "more than one figure"],
  ] as const)("%s %j", (kind, text, why) => {
    const variation = variationOf(shown(kind, text), 0.2);
    expect(variation).toMatchObject({ by: "none", why: expect.stringContaining(why) });
  });

  it("a text that is refused now", () => {
    const problem = {
      code: "unreadable",
      path: ["kerf"],
      allowed: "a length",
      received: "a little",
      remedy: "Write it as 1/8 in.",
      sentence: "kerf: …",
    };
    expect(variationOf(shown("length", "a little", { problem }), 0.2).by).toBe("none");
  });
});

describe("the reader's own bounds", () => {
  const kerf = shown("length", "1/8 in");
  it("take the place of the usual ones, each for itself", () => {
    const { trials } = variedEntry("a.md#kerf", kerf, { share: 0.2, own: { low: "1/16 in" } });
    expect(trials.map(({ end, candidates }) => [end, candidates[0]])).toEqual([
      ["low", "1/16 in"],
      ["high", "0.15 in"],
    ]);
  });

  it("make a range where there is no usual one, but of no choice", () => {
    const none = shown("length", "none");
    const own = { low: "1 in", high: "2 in" };
    expect(variedEntry("a.md#depth", none, { share: 0.2, own }).trials).toHaveLength(2);
    const choice = shown("choice", "a", { options: [{ text: "a", label: "a" }] });
    expect(variedEntry("a.md#lap", choice, { share: 0.2, own }).trials).toHaveLength(0);
  });
});
