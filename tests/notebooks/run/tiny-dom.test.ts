import { describe, expect, it } from "vitest";
import { Plot } from "../../../build/plot.ts";
import { show } from "../../../notebooks/engine/run/index.ts";
import type { Tree } from "../../../notebooks/engine/types/index.ts";
import { fakeHost } from "./fake-host.ts";

const host = fakeHost();
const heights = [
  { bed: "A", height: 11 },
  { bed: "B", height: 22 },
  { bed: "C", height: 33 },
];

function drawn(value: unknown) {
  const shown = show(value, host, "us");
  if (shown.kind !== "drawing") throw new Error(`no drawing but ${JSON.stringify(shown)}`);
  return shown.drawing;
}

function all(tree: Tree | undefined, name: string): Tree[] {
  if (tree === undefined || typeof tree === "string") return [];
  return [...(tree[1] === name ? [tree] : []), ...tree[3].flatMap((part) => all(part, name))];
}

describe("charts without a page", () => {
  it("gives a bar for each row, higher for more", () => {
    const drawing = drawn(Plot.barY(heights, { x: "bed", y: "height" }).plot());
    const bars = all(drawing.forms[0]?.tree, "rect");
    const sizes = bars.map((bar) => (typeof bar === "string" ? 0 : Number(bar[2].height)));
    expect(sizes).toHaveLength(3);
    expect((sizes[1] ?? 0) / (sizes[0] ?? 1)).toBeCloseTo(2);
    expect((sizes[2] ?? 0) / (sizes[0] ?? 1)).toBeCloseTo(3);
  });

  it.each([
    ["a line", Plot.lineY([1, 4, 2])],
    ["stacked areas", Plot.areaY(heights, Plot.stackY({ x: "height", y: "height", z: null }))],
    ["dots", Plot.dot(heights, { x: "height", y: "height", r: "height" })],
    ["cells", Plot.cell(heights, { x: "bed", fill: "height" })],
    ["arrows", Plot.arrow([{ a: 1, b: 2 }], { x1: "a", y1: "a", x2: "b", y2: "b" })],
    ["boxes", Plot.boxY([1, 2, 3, 4, 20])],
    ["a regression with its band", Plot.linearRegressionY(heights, { x: "height", y: "height" })],
    ["tips", Plot.tip(heights, { x: "height", y: "height", title: "bed" })],
    ["small multiples", Plot.dot(heights, { x: "height", y: "height", fx: "bed" })],
  ])("draws %s", (_, mark) => {
    const tree = drawn(Plot.plot({ marks: [mark] })).forms[0]?.tree;
    expect(all(tree, "svg")).toHaveLength(1);
    expect(all(tree, "g").length).toBeGreaterThan(0);
    expect(JSON.stringify(tree)).not.toMatch(/NaN|undefined/);
  });

  it("takes the words for those who cannot see it from the chart's options", () => {
    const marks = [Plot.barY(heights, { x: "bed", y: "height" })];
    const plain = drawn(
      Plot.plot({ marks, ariaLabel: "Heights", ariaDescription: "C is highest" }),
    );
    expect([plain.title, plain.alternative]).toEqual(["Heights", "C is highest"]);
    const framed = drawn(Plot.plot({ marks, title: "Walls", caption: "In inches" }));
    expect([framed.title, framed.caption]).toEqual(["Walls", "In inches"]);
  });

  it("draws a legend of colours by name", () => {
    const marks = [Plot.dot(heights, { x: "height", fill: "bed" })];
    const drawing = drawn(Plot.plot({ marks, color: { legend: true, domain: ["A", "rotten"] } }));
    expect(JSON.stringify(drawing.forms[0]?.tree)).toContain('"rotten"');
  });
});
