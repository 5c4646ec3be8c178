import { describe, expect, it } from "vitest";
import { graphOf, reached } from "../../../../notebooks/engine/page/depends/graph.ts";
import { countsInWords, nearOf } from "../../../../notebooks/engine/page/depends/words.ts";
import type { CellId, OutlineCell } from "../../../../notebooks/engine/types/index.ts";

/** An outline in short: `c: a b` is a cell that takes two, `c?` a quiet one. */
function outline(text: string): ReadonlyMap<CellId, OutlineCell> {
  const cells = text.split(";").map((line) => {
    const [head = "", names = ""] = line.split(":").map((part) => part.trim());
    const name = head.replace("?", "");
    const takes = names.split(" ").filter(Boolean).map(idOf);
    const hints = { pinned: false, quiet: head.includes("?"), folded: false, title: name };
    const cell: OutlineCell = {
      ...{ id: idOf(name), name, file: "n.md", line: 1, what: "cell", hints, formula: "" },
      ...{ takes, gives: [], functions: [] },
    };
    return [cell.id, cell] as const;
  });
  return new Map(cells);
}

const idOf = (name: string): CellId => `n.md#${name}`;

function shown(text: string, only?: string, steps = false): string {
  const options = only === undefined ? { steps } : { steps, only: idOf(only) };
  const { cells, edges } = graphOf(outline(text), options);
  const lines = edges.map(({ from, to }) => `${from.slice(5)}>${to.slice(5)}`).sort();
  return `${cells.map(({ name }) => name).join(" ")} | ${lines.join(" ")}`;
}

describe("which cells feed which", () => {
  it("goes straight past a quiet step", () => {
    expect(shown("a; q?: a; b: q")).toBe("a b | a>b");
    expect(shown("a; q?: a; r?: q; b: r a")).toBe("a b | a>b");
  });

  it("shows quiet steps where they are asked for", () => {
    expect(shown("a; q?: a; b: q", undefined, true)).toBe("a q b | a>q q>b");
  });

  it("keeps a quiet step that would leave a line from each to each", () => {
    const many = "a; b; c; q?: a b c; x: q; y: q; z: q";
    expect(shown(many)).toBe("a b c q x y z | a>q b>q c>q q>x q>y q>z");
    expect(shown("a; b; q?: a b; x: q; y: q")).toBe("a b x y | a>x a>y b>x b>y");
  });

  it("shows only what feeds one cell, and what it feeds", () => {
    expect(shown("a; b: a; c: b; d: c; other: a", "c")).toBe("a b c d | a>b b>c c>d");
    expect(shown("a; q?: a; b: q", "q")).toBe("a q b | a>q q>b");
  });

  it("leaves out what is not there, and what takes itself", () => {
    expect(shown("a: a gone")).toBe("a | ");
  });

  it("finds what is far off, in circles too", () => {
    const { edges } = graphOf(outline("a: c; b: a; c: b; d: c"), { steps: true });
    expect([...reached(idOf("d"), edges, "from")].sort()).toEqual(["a", "b", "c"].map(idOf));
    expect([...reached(idOf("a"), edges, "to")].sort()).toEqual(["b", "c", "d"].map(idOf));
  });

  it("says how many in words", () => {
    const { edges } = graphOf(outline("a; b; c: a b; d: c"), { steps: true });
    expect(countsInWords(nearOf(idOf("c"), edges))).toBe("Takes 2, gives to 1");
    expect(countsInWords(nearOf(idOf("a"), edges))).toBe("Takes nothing, gives to 1");
    expect(countsInWords(nearOf(idOf("d"), edges))).toBe("Takes 1, gives to nothing");
  });
});
