import { beforeAll, describe, expect, it } from "vitest";
import { aq } from "../../../build/arquero.ts";
import { Plot } from "../../../build/plot.ts";
import { freezeLanguage } from "../../../notebooks/engine/worker/freeze.ts";

// All of this file's tests run in a language that stays frozen, as the closed room's does.
beforeAll(() => freezeLanguage(globalThis));

const beds = [
  { bed: "A", area: 32, made: "oak" },
  { bed: "B", area: 24, made: "larch" },
  { bed: "C", area: 32, made: "oak" },
];

describe("a frozen language", () => {
  it.each<[string, () => void]>([
    ["a method of all arrays", () => Object.assign(Array.prototype, { map: () => [] })],
    ["a field of all objects", () => Object.assign(Object.prototype, { evil: 1 })],
    ["how all objects become text", () => Object.assign(Object.prototype, { toString: () => "" })],
    ["the maker of functions", () => Object.assign(Function.prototype, { constructor: 1 })],
    ["the class of a list", () => Object.assign(Array, { [Symbol.species]: Object })],
    ["the iterators' step", () => Object.assign(Object.getPrototypeOf([].values()), { next: 1 })],
    ["promises", () => Object.assign(Promise.prototype, { catch: () => undefined })],
    ["maps", () => Object.assign(Map.prototype, { get: () => "mine" })],
    ["JSON", () => Object.assign(JSON, { stringify: () => "" })],
    ["numbers", () => Object.assign(Number, { isFinite: () => true })],
    ["patterns", () => Object.assign(RegExp.prototype, { exec: () => null })],
    ["how errors tell their stack", () => Object.assign(Error, { prepareStackTrace: () => "" })],
    [
      "generators",
      () =>
        Object.assign(Object.getPrototypeOf(Object.getPrototypeOf((function* () {})())), { x: 1 }),
    ],
    ["typed arrays", () => Object.assign(Object.getPrototypeOf(Uint8Array), { from: 1 })],
    [
      "a getter of all objects",
      () => Object.defineProperty(Object.prototype, "x", { get: () => 1 }),
    ],
    ["what all objects inherit", () => Object.setPrototypeOf(Object.prototype, {})],
  ])("does not let %s be changed", (_, tamper) => {
    expect(tamper).toThrow(TypeError);
  });

  it("lets records, errors and functions have fields of their own as before", () => {
    const own: Record<string, unknown> = {};
    own.toString = () => "mine";
    Object.assign(own, { constructor: 4 });
    const error = new RangeError("before");
    error.name = "Mine";
    error.message = "after";
    const call = () => 1;
    call.toString = () => "a call";
    expect(`${String(own)} ${own.constructor} ${error} ${String(call)}`).toBe(
      "mine 4 Mine: after a call",
    );
    expect(Object.keys(own)).toEqual(["toString", "constructor"]);
    expect(JSON.stringify({ name: class A extends Error {}.name })).toBe('{"name":"A"}');
  });

  it.each<[string, () => unknown]>([
    ["bars", () => [Plot.barY(beds, { x: "bed", y: "area", fill: "made" }), Plot.ruleY([0])]],
    [
      "bars in a pile",
      () => [Plot.barX(beds, Plot.groupY({ x: "sum" }, { y: "made", x: "area" }))],
    ],
    ["lines", () => [Plot.lineY([1, 3, 2], { marker: "dot" }), Plot.areaY([1, 3, 2])]],
    ["a smooth line", () => [Plot.lineY([1, 3, 2], Plot.windowY(2, { curve: "natural" }))]],
    [
      "dots with a trend",
      () => [
        Plot.dot([[1, 2]]),
        Plot.linearRegressionY([
          [1, 2],
          [2, 3],
          [3, 5],
        ]),
      ],
    ],
    ["boxes", () => [Plot.boxX([1, 2, 3, 9])]],
    ["counts", () => [Plot.rectY([1, 2, 2, 5], Plot.binX({ y: "count" }))]],
    ["cells and texts", () => [Plot.cell(beds, { x: "bed", fill: "area" }), Plot.text(["a"])]],
    ["dates", () => [Plot.ruleX([new Date(0), new Date(1e10)]), Plot.axisX()]],
    ["facets", () => [Plot.barX(beds, { x: "area", fy: "made" }), Plot.frame()]],
  ])("lets a plot draw %s", (_, marks) => {
    const plot = Plot.plot({ grid: true, marks: marks() as never });
    expect(plot.childNodes.length).toBeGreaterThan(1);
  });

  it("lets tables be reshaped", () => {
    const table = aq.table({
      bed: ["A", "B", "C"],
      area: [32, 24, 32],
      made: ["oak", "larch", "oak"],
    });
    expect(table.groupby("made").rollup({ n: aq.op.count() }).objects()).toEqual([
      { made: "oak", n: 2 },
      { made: "larch", n: 1 },
    ]);
    expect(table.filter((row: { area: number }) => row.area > 30).numRows()).toBe(2);
    expect(table.pivot("made", "area").numRows()).toBe(1);
    expect(table.orderby("area").dedupe("made").fold(["area"]).numRows()).toBe(2);
    expect(aq.fromCSV("a,b\n1,2").toCSV()).toContain("1,2");
    expect(table.derive({ twice: "d => d.area * 2" }).get("twice", 0)).toBe(64);
  });
});
