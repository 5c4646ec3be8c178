import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CompiledCell } from "../../../notebooks/engine/compile/index.ts";
import { cellNamed, cellsText, compileTexts } from "./compiled.ts";

describe("circles", () => {
  test("are named with their way and lines, at the name that closes them", () => {
    const program = compileTexts({
      "n.md": cellsText({ a: "1 +\n  b", b: "c", c: "a * d", d: "1", e: "a" }),
    });
    expect(cellNamed(program, "a").problem).toEqual({
      code: "cycle",
      file: "n.md",
      line: 3,
      column: 3,
      names: ["a", "b", "c"],
      message:
        "These cells wait for each other: a (line 1) takes b (line 6) takes c (line 10) takes a (line 1). Let one of them do without the next.",
    });
    expect(cellNamed(program, "c").problem).toMatchObject({
      line: 11,
      column: 1,
      names: ["c", "a", "b"],
    });
    // What merely waits for a circle, or feeds it, has no problem of its own.
    expect(cellNamed(program, "d").problem).toBeUndefined();
    expect(cellNamed(program, "e").problem).toBeUndefined();
  });

  test("a cell that names itself", () => {
    const program = compileTexts({ "n.md": cellsText({ a: "a + 1" }) });
    expect(cellNamed(program, "a").problem).toMatchObject({
      code: "cycle",
      names: ["a"],
      message: expect.stringMatching(/^a names itself/),
    });
  });

  test("a cell in two circles tells the shorter", () => {
    const program = compileTexts({ "n.md": cellsText({ a: "b + d", b: "c", c: "a", d: "a" }) });
    expect(cellNamed(program, "a").problem?.names).toEqual(["a", "d"]);
  });
});

// Any graph of up to twelve cells, against reachability by brute force.
test("cells stand after what they take; those on a circle, and only those, are told so", () => {
  const edges = fc.array(fc.tuple(fc.nat(11), fc.nat(11)), { maxLength: 18 });
  fc.assert(
    fc.property(edges, (pairs) => {
      const takes = Array.from({ length: 12 }, (_, i) =>
        pairs.filter(([from]) => from === i).map(([, to]) => to),
      );
      const formulas = Object.fromEntries(
        takes.map((to, i) => [`c${i}`, ["1", ...to.map((j) => `c${j}`)].join(" + ")]),
      );
      const { cells } = compileTexts({ "n.md": cellsText(formulas) });
      const reach = reachable(takes);
      expect(cells).toHaveLength(12);
      const position = new Map(cells.map((cell, index) => [cell.id as string, index]));
      for (const cell of cells) {
        const i = Number(cell.name.slice(1));
        const circular = reach[i]?.has(i) ?? false;
        expect(cell.problem?.code).toBe(circular ? "cycle" : undefined);
        if (circular) expectWay(cell, takes);
        else
          for (const taken of cell.takes)
            expect(position.get(taken)).toBeLessThan(position.get(cell.id) ?? -1);
      }
    }),
    { numRuns: 500 },
  );
});

function reachable(takes: readonly (readonly number[])[]): readonly ReadonlySet<number>[] {
  const reach = takes.map((to) => new Set(to));
  for (let turn = 0; turn < takes.length; turn += 1) {
    for (const set of reach)
      for (const via of [...set]) for (const to of reach[via] ?? []) set.add(to);
  }
  return reach;
}

function expectWay(cell: CompiledCell, takes: readonly (readonly number[])[]): void {
  const way = (cell.problem?.names ?? []).map((name) => Number(name.slice(1)));
  expect(way[0]).toBe(Number(cell.name.slice(1)));
  way.forEach((from, index) => {
    expect(takes[from]).toContain(way[(index + 1) % way.length]);
  });
}

test("a chain of 20,000 cells and a circle of 2,000 are put in order", () => {
  const chain = Object.fromEntries(
    Array.from({ length: 20_000 }, (_, i) => [`c${i}`, `c${i + 1}`]),
  );
  const { cells } = compileTexts({ "n.md": cellsText({ ...chain, c20000: "1" }) });
  expect(cells.map((cell) => cell.name).slice(0, 3)).toEqual(["c20000", "c19999", "c19998"]);
  const circle = Object.fromEntries(
    Array.from({ length: 2000 }, (_, i) => [`c${i}`, `c${(i + 1) % 2000}`]),
  );
  const round = compileTexts({ "n.md": cellsText(circle) });
  expect(round.cells.filter((cell) => cell.problem?.code === "cycle")).toHaveLength(2000);
});
