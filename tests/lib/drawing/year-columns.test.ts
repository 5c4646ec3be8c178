import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubicYard, money, times, yearColumns } from "../../../lib/index.ts";
import { formAt, texts } from "./tree-reader.ts";

const yards = (name: string, n: number) => ({ name, amount: times(n, cubicYard) });

describe("columns by year", () => {
  it("are as high as their parts together, the parts in one order", () => {
    const drawing = yearColumns([
      { year: "2026", parts: [yards("compost", 1), yards("bark", 3)] },
      { year: "2027", parts: [yards("bark", 1), yards("compost", 1)] },
    ]);
    const parts = formAt(drawing, 670).filter(({ name }) => name === "rect");
    expect(parts.map(({ kind }) => kind).slice(2, 4)).toEqual(["part of-1", "part of-2"]);
    const [, , compost, bark, compost2, bark2] = parts.map(({ at }) => at);
    expect(Number(bark?.height) / Number(compost?.height)).toBeCloseTo(3, 1);
    expect(Number(bark2?.height) / Number(compost2?.height)).toBeCloseTo(1, 1);
    expect(Number(compost?.y)).toBeCloseTo(Number(bark?.y) + Number(bark?.height), 0);
    expect(drawing.alternative.replaceAll(/\s/g, " ")).toBe(
      "2026: compost 1 cu yd, bark 3 cu yd; 2027: bark 1 cu yd, compost 1 cu yd.",
    );
  });

  it("need no key for one part, and print money over each column", () => {
    const drawing = yearColumns([
      { year: "1", parts: [{ name: "all", amount: money(12, "USD") }] },
    ]);
    expect(texts(formAt(drawing, 670))).toContain("$12.00");
    expect(texts(formAt(drawing, 670))).not.toContain("all");
  });

  it("say of a year without anything that there is nothing", () => {
    const drawing = yearColumns([
      { year: "1", parts: [yards("compost", 1)] },
      { year: "2", parts: [] },
    ]);
    expect(drawing.alternative).toMatch(/; 2: nothing\.$/);
    expect(JSON.stringify(yearColumns([{ year: "1", parts: [] }]))).not.toMatch(/NaN|Infinity/);
  });

  it("stay on the sheet, however many years", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.constantFrom(0, 670), (count, from) => {
        const years = Array.from({ length: count }, (_, at) => ({
          year: String(2026 + at),
          parts: [yards("compost", 1 + (at % 3)), yards("a much longer name of something", 2)],
        }));
        const parts = formAt(yearColumns(years), from);
        const wide = Number((parts[0]?.at.viewBox ?? "").split(" ")[2]);
        for (const { name, at } of parts)
          if (name === "rect")
            expect(Number(at.x) + Number(at.width)).toBeLessThanOrEqual(wide + 0.1);
      }),
      { numRuns: 40 },
    );
  });

  it("refuse too many years, too many parts, and two kinds", () => {
    const years = (count: number) =>
      Array.from({ length: count }, (_, at) => ({ year: `${at}`, parts: [yards("compost", 1)] }));
    expect(() => yearColumns(years(61))).toThrow(/at most 60/);
    const parts = Array.from({ length: 7 }, (_, at) => yards(`part ${at}`, 1));
    expect(() => yearColumns([{ year: "1", parts }])).toThrow(/at most 6/);
    const mixed = [yards("compost", 1), { name: "cost", amount: money(1, "USD") }];
    expect(() => yearColumns([{ year: "1", parts: mixed }])).toThrow(/first amount/);
  });
});
