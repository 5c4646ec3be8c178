import { describe, expect, it } from "vitest";
import { amount, foot, inch, ProblemError, printQuantity } from "../../../lib/index.ts";
import type { Entry } from "../../../notebooks/engine/types/index.ts";
import * as fields from "../../../notebooks/fields/index.ts";

function readOf<T>(entry: Entry<T>, text = entry.initial): T {
  const reading = entry.read(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problem));
  return reading.value;
}

function problemOf(entry: Entry, text: string) {
  const reading = entry.read(text);
  if (reading.ok) throw new Error(`${text} was read`);
  return reading.problem;
}

function problemsOf(make: () => unknown) {
  try {
    make();
  } catch (error) {
    if (error instanceof ProblemError) return error.problems;
    throw error;
  }
  throw new Error("nothing was refused");
}

describe("options of the wrong kind", () => {
  // As a cell may write them, where no types are checked.
  const loose = fields as unknown as Readonly<Record<string, (...given: unknown[]) => unknown>>;
  const refused = (maker: string, ...given: unknown[]) =>
    problemsOf(() => loose[maker]?.(...given)).map(({ code, path }) => [code, path.join(".")]);

  it.each([
    ["lengthEntry", ["1 ft", 3], "unreadable", "options"],
    ["numberEntry", ["3", null], "missing", "options"],
    ["lengthEntry", ["1 ft", { hint: 5 }], "unreadable", "options.hint"],
    ["lengthEntry", ["1 ft", { sources: "nist" }], "unreadable", "options.sources"],
    ["yesNoEntry", ["yes", { sources: ["a", 5] }], "unreadable", "options.sources.2"],
    ["lengthEntry", ["1 ft", { min: 3 }], "wrong-unit", "options.min"],
    ["lengthEntry", ["1 ft", { max: "3 gal" }], "wrong-unit", "options.max"],
    ["numberEntry", ["3", { min: Number.NaN }], "unreadable", "options.min"],
    ["choiceEntry", ["x", { choices: "xyz" }], "unreadable", "options.choices"],
    ["choiceEntry", ["x", { choices: ["x", 3] }], "unreadable", "options.choices.2"],
    ["choiceEntry", ["x", { choices: { x: 3 } }], "unreadable", "options.choices.1"],
    ["numberEntry", [3], "unreadable", "default"],
    ["lengthEntry", [], "missing", "default"],
  ])("%s%j is refused: %s at %s", (maker, given, code, path) => {
    expect(refused(maker, ...given)).toContainEqual([code, path]);
  });
});

describe("an entry for a length", () => {
  const kerf = fields.lengthEntry("1/8 in", {
    min: "0 in",
    max: "1/2 in",
    hint: "Hand saws take more.",
  });

  it("tells the page all it needs", () => {
    expect(kerf).toMatchObject({
      entry: "length",
      initial: "1/8 in",
      unit: "in",
      limits: "0 in to 1/2 in",
      hint: "Hand saws take more.",
    });
  });

  it("reads its default, and what is typed", () => {
    expect(amount(readOf(kerf), inch)).toBe(0.125);
    expect(amount(readOf(kerf, "3 mm"), inch)).toBeCloseTo(0.11811, 5);
  });

  it("gives a bare number its unit, and says what to keep", () => {
    expect(kerf.read("1/4")).toMatchObject({ ok: true, complete: "1/4 in" });
    expect(kerf.read("1/4 in")).not.toHaveProperty("complete");
    expect(amount(readOf(fields.lengthEntry("8 ft 3 in", { unit: "ft" }), "2"), foot)).toBe(2);
  });

  it("keeps its limits, which themselves are allowed", () => {
    expect(amount(readOf(kerf, "1/2 in"), inch)).toBe(0.5);
    expect(amount(readOf(kerf, "0 in"), inch)).toBe(0);
    expect(problemOf(kerf, "9/16 in")).toMatchObject({ code: "too-large", received: "9/16 in" });
  });

  it("refuses what is below nothing unless told otherwise", () => {
    expect(problemOf(fields.lengthEntry("2 in"), "-1 in").code).toBe("too-small");
    const offset = fields.lengthEntry("2 in", { min: "-1 ft" });
    expect(amount(readOf(offset, "-3 in"), inch)).toBe(-3);
  });

  it("takes limits as values too", () => {
    const entry = fields.lengthEntry("2 in", { max: foot });
    expect(entry.limits).toBe("at most 1 ft");
    expect(problemOf(entry, "13 in").code).toBe("too-large");
  });

  it("takes `none` where it may be written", () => {
    const cap = fields.lengthEntry("none", { orNone: true, max: "2 ft" });
    expect(readOf(cap)).toBeNull();
    expect(readOf(cap, " None ")).toBeNull();
    expect(cap.limits).toBe("at most 2 ft, or none");
    expect(problemOf(kerf, "none").code).toBe("unreadable");
  });
});

describe("other entries", () => {
  it("read their kinds", () => {
    expect(printQuantity(readOf(fields.volumeEntry("60 L")), { system: "metric" })).toBe("60 L");
    expect(printQuantity(readOf(fields.massEntry("1000 lb")))).toBe("1,000 lb");
    expect(printQuantity(readOf(fields.areaEntry("32 sq ft")))).toBe("32 sq ft");
    expect(printQuantity(readOf(fields.durationEntry("90 min")))).toBe("1.5 h");
    expect(readOf(fields.moneyEntry("6.00"))).toMatchObject({ si: 6 });
    expect(readOf(fields.moneyEntry("6.00"), "€6")).toMatchObject({ si: 6, currency: "EUR" });
    expect(readOf(fields.numberEntry("0.75", { min: 0, max: 1 }))).toBe(0.75);
    expect(readOf(fields.yesNoEntry("yes"))).toBe(true);
    expect(readOf(fields.sectionEntry("2x12"))).toMatchObject({ name: "2x12" });
    expect(readOf(fields.sectionEntry("none", { orNone: true }))).toBeNull();
    expect(readOf(fields.dateEntry("2026-04"))).toEqual({ year: 2026, month: 4 });
    expect(fields.dateEntry({ year: 2026, month: 4, day: 25 }).initial).toBe("2026-04-25");
    expect(readOf(fields.textEntry(" Ours "))).toBe("Ours");
  });

  it("read shares as percentages", () => {
    const tax = fields.percentEntry("8 %", { max: "100 %" });
    expect(readOf(tax)).toBe(0.08);
    expect(tax.read("12")).toMatchObject({ ok: true, value: 0.12, complete: "12 %" });
    expect(problemOf(tax, "101 %").code).toBe("too-large");
    expect(problemOf(tax, "-1 %").code).toBe("too-small");
    expect(fields.percentEntry("8 %", { max: 0.5 }).limits).toBe("at most 50 %");
  });

  it("count in whole numbers from nothing", () => {
    const spare = fields.countEntry("0", { max: 12 });
    expect(readOf(spare)).toBe(0);
    expect(problemOf(spare, "1.5").code).toBe("unreadable");
    expect(problemOf(spare, "-1").code).toBe("too-small");
    expect(problemOf(spare, "13").code).toBe("too-large");
  });

  it("offer what may be chosen", () => {
    const lap = fields.choiceEntry("sides", {
      choices: { sides: "Sides run through", ends: "Ends" },
    });
    expect(lap.options).toEqual([
      { text: "sides", label: "Sides run through" },
      { text: "ends", label: "Ends" },
    ]);
    expect(readOf(lap, "ENDS")).toBe("ends");
    expect(problemOf(lap, "corners")).toMatchObject({ code: "unknown", received: "corners" });
    expect(fields.choiceEntry("a", { choices: ["a", "b"] }).options?.[1]?.label).toBe("b");
  });

  it("limit the length of words", () => {
    expect(problemOf(fields.textEntry(""), "x".repeat(501)).code).toBe("too-large");
  });
});

describe("bad makers", () => {
  it.each([
    ["a default that is no length", () => fields.lengthEntry("6 fot"), "unreadable", "default"],
    ["a default of another kind", () => fields.lengthEntry("6 lb"), "wrong-unit", "default"],
    ["a bare default without a unit", () => fields.lengthEntry("6"), "wrong-unit", "default"],
    [
      "a default beyond the limit",
      () => fields.lengthEntry("2 ft", { max: "1 ft" }),
      "too-large",
      "default",
    ],
    [
      "a limit that is no length",
      () => fields.lengthEntry("2 ft", { max: "much" }),
      "unreadable",
      "options",
    ],
    [
      "a default that is no choice",
      () => fields.choiceEntry("c" as "a", { choices: ["a"] }),
      "unknown",
      "default",
    ],
    ["no choices", () => fields.choiceEntry("a" as never, { choices: [] }), "missing", "options"],
    ["a default that is no date", () => fields.dateEntry("4/5/2026"), "unreadable", "default"],
    ["a default that is no section", () => fields.sectionEntry("big"), "unreadable", "default"],
    ["a default that is no count", () => fields.countEntry("-2"), "too-small", "default"],
    ["a default that is no share", () => fields.percentEntry("lots"), "unreadable", "default"],
  ])("%s is refused", (_, make, code, place) => {
    expect(problemsOf(make)[0]).toMatchObject({ code, path: expect.arrayContaining([place]) });
  });

  it("a misspelt option is refused by name, with those there are", () => {
    const options = { mn: "0 in" } as object;
    const [problem] = problemsOf(() => fields.lengthEntry("2 in", options));
    expect(problem).toMatchObject({ code: "unknown", path: ["options", "mn"], received: "mn" });
    expect(problem?.allowed).toContain("min");
  });

  it("may be moved by a slide, between its limits only", () => {
    expect(fields.countEntry("3", { max: 15, slide: 1 }).slide).toEqual({
      from: 0,
      to: 15,
      step: 1,
    });
    expect(fields.percentEntry("5 %", { min: "2 %", max: "40 %", slide: 2 }).slide).toEqual({
      from: 2,
      to: 40,
      step: 2,
    });
    expect(() => fields.numberEntry("3", { max: 15, slide: 1 })).toThrow(/both limits/);
    expect(() => fields.countEntry("3", { max: 15, slide: 0 })).toThrow(/slide/);
  });
});
