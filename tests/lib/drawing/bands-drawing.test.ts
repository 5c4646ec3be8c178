import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandsDrawing, type DrawnSeries, inch, money, times } from "../../../lib/index.ts";
import { formAt, texts } from "./tree-reader.ts";

const inches = (n: number) => times(n, inch);
const line = (name: string, values: readonly number[]): DrawnSeries => ({
  name,
  points: values.map((value, at) => ({ at, value: inches(value) })),
});
const elementsOf = (series: readonly DrawnSeries[], kind: string, from = 670) =>
  formAt(bandsDrawing(series), from).filter((each) => each.kind === kind);

/** With plain blanks for those that hold figure and unit together. */
const plain = (all: readonly string[]) => all.map((text) => text.replaceAll(/\s/g, " "));

/** The places a path goes through. */
const placesOf = (d: string | undefined) =>
  [...(d ?? "").matchAll(/[ML](\S+) ([^MLZH]+)/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );

describe("lines with bands", () => {
  it("stand as high as their values are, from nothing", () => {
    const [path] = elementsOf([line("soil", [10, 5, 0])], "line of-1");
    const ys = placesOf(path?.at.d).map(([, y]) => y);
    const [ten = 0, five = 0, none = 0] = ys;
    expect((none - five) / (none - ten)).toBeCloseTo(0.5, 2);
  });

  it("have their band from low to high, and none where nothing is uncertain", () => {
    const range = { low: inches(6), likely: inches(8), high: inches(9) };
    const series = [{ name: "soil", points: [0, 1].map((at) => ({ at, value: range })) }];
    const [band] = elementsOf(series, "band of-1");
    const [line1] = elementsOf(series, "line of-1");
    const ys = placesOf(band?.at.d).map(([, y]) => y);
    const likely = placesOf(line1?.at.d)[0]?.[1] ?? 0;
    expect(Math.min(...ys)).toBeLessThan(likely);
    expect(Math.max(...ys)).toBeGreaterThan(likely);
    expect(elementsOf([line("soil", [8, 8])], "band of-1")[0]?.at.d).toBe("");
  });

  it("hold a value up to the next place where they are steps", () => {
    const series = [{ ...line("bags", [1, 2, 3]), shape: "step" as const }];
    const places = placesOf(elementsOf(series, "line of-1")[0]?.at.d);
    expect(places).toHaveLength(5);
    expect(places[1]?.[1]).toBe(places[0]?.[1]);
    expect(places[1]?.[0]).toBe(places[2]?.[0]);
  });

  it("say of a step half-way what it shows there: the value before", () => {
    const series = [{ ...line("bags", [5, 9]), shape: "step" as const }];
    const drawing = bandsDrawing(series, { marked: 0.5 });
    expect(drawing.alternative).toBe("bags: 5″ at 0 years, 5″ at 0.5 years, 9″ at 1 years.");
    expect(texts(formAt(drawing, 670))).toContain("5″");
  });

  it("have round places along that do not begin at nothing", () => {
    const years = [2026, 2041].map((at) => ({ at, value: inches(at - 2020) }));
    const shown = texts(formAt(bandsDrawing([{ name: "soil", points: years }]), 670));
    expect(shown.filter((text) => /^20[234]\d$/.test(text)).length).toBeGreaterThan(4);
  });

  it("cut a name short that would leave the sheet", () => {
    const long = "left to itself for fifteen years, without any compost in spring";
    for (const from of [0, 560, 670]) {
      const parts = formAt(bandsDrawing([line(long, [8, 9])]), from);
      const wide = Number((parts[0]?.at.viewBox ?? "").split(" ")[2]);
      const [label] = parts.filter(({ kind }) => kind === "label");
      expect(texts(parts).some((text) => text.endsWith("…"))).toBe(true);
      expect(Number(label?.at.x)).toBeLessThan(wide);
    }
  });

  it("leave a name whole that has room", () => {
    for (const name of ["rim", "wanted", "loose, brought", "as it was in spring"])
      for (const from of [0, 560, 670])
        expect(texts(formAt(bandsDrawing([line(name, [8, 9])]), from))).toContain(name);
  });

  it("say their ends, the marked place with its range, and the levels", () => {
    const value = (likely: number) => ({
      low: inches(likely - 1),
      likely: inches(likely),
      high: inches(likely + 1),
    });
    const series = [
      { name: "soil", points: [0, 2, 4].map((at) => ({ at, value: value(9 - at) })) },
    ];
    const { alternative } = bandsDrawing(series, {
      marked: 3,
      levels: [{ name: "rim", value: inches(11) }],
    });
    expect(alternative).toBe(
      "soil: 9″ (8″ to 10″) at 0 years, 6″ (5″ to 7″) at 3 years, 5″ (4″ to 6″) at 4 years; rim 11″.",
    );
  });

  it("print shares per cent, money in its currency, lengths in the reader's system", () => {
    const shares = [{ name: "organic", points: [0, 1].map((at) => ({ at, value: 0.2 })) }];
    expect(plain(texts(formAt(bandsDrawing(shares, { percent: true }), 670)))).toContain("20 %");
    const costs = [{ name: "bags", points: [0, 1].map((at) => ({ at, value: money(90, "USD") })) }];
    expect(plain(texts(formAt(bandsDrawing(costs), 670)))).toContain("$100");
    const metric = bandsDrawing([line("soil", [8, 9])], { units: "metric" });
    expect(plain(texts(formAt(metric, 670)))).toContain("20 cm");
  });

  it("keep everything on the sheet, and names at the ends apart", () => {
    const value = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    const some = fc.array(fc.array(value, { minLength: 2, maxLength: 9 }), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(some, fc.constantFrom(0, 420, 560, 670), (all, from) => {
        const drawing = bandsDrawing(all.map((values, at) => line(`line ${at + 1}`, values)));
        const parts = formAt(drawing, from);
        const [, , wide = 0, high = 0] = (parts[0]?.at.viewBox ?? "").split(" ").map(Number);
        for (const { kind, at } of parts) {
          for (const [x, y] of placesOf(at.d)) {
            expect(x).toBeGreaterThanOrEqual(-0.1);
            expect(x).toBeLessThanOrEqual(wide + 0.1);
            expect(y).toBeGreaterThanOrEqual(-0.1);
            expect(y).toBeLessThanOrEqual(high + 0.1);
          }
          if (kind === "label") expect(Number(at.y)).toBeLessThan(high);
        }
        const ys = parts
          .filter(({ kind }) => kind === "label")
          .map(({ at }) => Number(at.y))
          .sort((a, b) => a - b);
        ys.forEach((y, at) => {
          if (at > 0) expect(y - (ys[at - 1] ?? 0)).toBeGreaterThan(17);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("do with no difference at all, with nothing, and with one place twice", () => {
    for (const values of [
      [0, 0],
      [7, 7],
      [1e-9, 1e-9],
    ])
      expect(JSON.stringify(bandsDrawing([line("soil", values)]))).not.toMatch(/NaN|Infinity/);
    const there = { name: "soil", points: [3, 3].map((at) => ({ at, value: inches(4) })) };
    expect(JSON.stringify(bandsDrawing([there], { marked: 3 }))).not.toMatch(/NaN|Infinity/);
  });

  it("refuse what cannot be drawn, and say where", () => {
    const draw = (series: readonly DrawnSeries[]) => () => bandsDrawing(series);
    expect(draw([line("soil", [8])])).toThrow(/points/);
    const back = { name: "soil", points: [1, 0].map((at) => ({ at, value: inches(4) })) };
    expect(draw([back])).toThrow(/go on to the right/);
    const mixed = {
      name: "cost",
      points: [
        { at: 0, value: money(1, "USD") },
        { at: 1, value: money(1, "EUR") },
      ],
    };
    expect(draw([mixed])).toThrow(/money in USD/);
    const kinds = {
      name: "cost",
      points: [
        { at: 0, value: inches(1) },
        { at: 1, value: 3 },
      ],
    };
    expect(draw([kinds])).toThrow(/as other values are/);
    const range = { low: inches(9), likely: inches(8), high: inches(10) };
    expect(draw([{ name: "soil", points: [0, 1].map((at) => ({ at, value: range })) }])).toThrow(
      /rise/,
    );
  });
});
