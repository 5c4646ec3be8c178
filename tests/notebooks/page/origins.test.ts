import { describe, expect, it } from "vitest";
import { originsOf } from "../../../notebooks/engine/page/origins.ts";
import type { CellId, OutlineCell } from "../../../notebooks/engine/types/index.ts";

function outlineOf(
  cells: readonly { name: string; quiet?: boolean; takes?: string[]; rule?: string }[],
): ReadonlyMap<CellId, OutlineCell> {
  return new Map(
    cells.map(({ name, quiet = false, takes = [], rule }) => {
      const id: CellId = `a.md#${name}`;
      const cell: OutlineCell = {
        id,
        name,
        file: "a.md",
        line: 1,
        what: "cell",
        hints: { pinned: false, quiet, folded: false, title: name },
        formula: "",
        takes: takes.map((one): CellId => `a.md#${one}`),
        gives: [],
        functions: rule === undefined ? [] : [{ name: `of ${name}`, rule, sources: ["x"] }],
      };
      return [id, cell];
    }),
  );
}

function origins(cells: Parameters<typeof outlineOf>[0], name: string) {
  const outline = outlineOf(cells);
  const cell = outline.get(`a.md#${name}`);
  if (!cell) throw new Error("no such cell");
  const { takes, functions } = originsOf(cell, outline);
  return { takes: takes.map((id) => id.slice(5)), rules: functions.map(({ rule }) => rule) };
}

const garden = [
  { name: "beds" },
  { name: "rows", quiet: true, takes: ["beds"], rule: "read" },
  { name: "depth" },
  { name: "plan", quiet: true, takes: ["rows", "depth"], rule: "area x depth" },
  { name: "part", quiet: true, takes: ["plan"] },
  { name: "fill", takes: ["part"] },
];

describe("where a figure comes from", () => {
  it("is what is drawn on the page, past the steps between", () => {
    expect(origins(garden, "fill").takes.sort()).toEqual(["beds", "depth"]);
  });

  it("has the rule of the nearest step that has one, and not of those before", () => {
    expect(origins(garden, "fill").rules).toEqual(["area x depth"]);
  });

  it("has the cell's own rule first", () => {
    const cells = [...garden, { name: "cost", takes: ["fill", "plan"], rule: "volume x price" }];
    expect(origins(cells, "cost")).toEqual({
      takes: ["fill", "beds", "depth"],
      rules: ["volume x price", "area x depth"],
    });
  });

  it("ends where cells take each other", () => {
    const cells = [
      { name: "a", quiet: true, takes: ["b"] },
      { name: "b", quiet: true, takes: ["a"] },
    ];
    expect(origins(cells, "a").takes).toEqual([]);
  });
});
