import { describe, expect, it } from "vitest";
import { FloodGate } from "../../../notebooks/engine/page/flood-gate.ts";
import { readMessage } from "../../../notebooks/engine/page/receive.ts";

const figure = { text: "4.2 cu yd", number: "4.2", unit: "cu yd", second: "3.2 m³" };
const state = (more: object) => ({ id: "rebuild.md#fill", cautions: [], problems: [], ...more });
const values = (...cells: unknown[]) => ({ kind: "values", session: 1, turn: 3, cells });
const cellsOf = (message: unknown) => {
  const read = readMessage(message);
  return read?.kind === "values" ? read.cells : undefined;
};

describe("readMessage", () => {
  it("takes well-formed messages as they are", () => {
    const shown = { kind: "figure", figure };
    for (const more of [{ shown }, { shown, cutShort: true, leftOut: "13 of 14 beds" }])
      expect(cellsOf(values(state(more)))).toEqual([state(more)]);
    for (const message of [
      { kind: "ready" },
      { kind: "alive" },
      { kind: "starting", session: 1, cell: "rebuild.md#fill" },
      { kind: "progress", session: 1, cell: "rebuild.md#boards", words: "sawing", fraction: 0.5 },
      { kind: "settled", session: 1, turn: 3, working: ["rebuild.md#boards"] },
    ])
      expect(readMessage(message)).toEqual(message);
  });

  it.each([
    ["nothing", undefined],
    ["a text", "values"],
    ["an array", [{ kind: "ready" }]],
    ["an unknown kind", { kind: "navigate", to: "https://example.org" }],
    ["an inherited kind", { kind: "constructor" }],
    ["a missing session", { kind: "starting", cell: "a#b" }],
    ["a session that is a text", { kind: "starting", session: "1", cell: "a#b" }],
    ["a cell that is no cell", { kind: "starting", session: 1, cell: "a" }],
    [
      "a fraction that is no number",
      { kind: "progress", session: 1, cell: "a#b", words: "", fraction: Number.NaN },
    ],
    ["words without end", { kind: "progress", session: 1, cell: "a#b", words: "x".repeat(5_000) }],
    ["cells that are no list", { kind: "values", session: 1, turn: 1, cells: { length: 1 } }],
  ])("refuses %s", (_, message) => {
    expect(readMessage(message)).toBeUndefined();
  });

  it.each([
    ["an unknown kind of value", { shown: { kind: "html", html: "<b>" } }],
    ["a note that is neither yes nor no", { cutShort: "<b>stopped</b>" }],
    ["a field nobody checks", { keep: "this" }],
    ["a list with holes", { cautions: Object.assign([], { length: 3 }) }],
    ["a map in place of a record", { shown: new Map([["kind", "nothing"]]) }],
    [
      "an entry with a field nobody checks",
      { entry: { entry: "text", initial: "", text: "", keep: 1 } },
    ],
    [
      "a drawing with a hole",
      {
        shown: {
          kind: "drawing",
          drawing: {
            title: "",
            alternative: "",
            forms: [{ from: 0, tree: [1, "g", {}, Array(2)] }],
          },
        },
      },
    ],
    ["remarks that are none", { remarks: [{ text: 4, path: [] }] }],
    ["a figure that is no text", { shown: { kind: "figure", figure: { ...figure, text: 4 } } }],
    [
      "a tree of another shape",
      {
        shown: {
          kind: "drawing",
          drawing: { title: "", alternative: "", forms: [{ from: 0, tree: { tag: "svg" } }] },
        },
      },
    ],
    [
      "a tree without end",
      {
        shown: {
          kind: "drawing",
          drawing: { title: "", alternative: "", forms: [{ from: 0, tree: deep(60) }] },
        },
      },
    ],
    ["an entry of no known kind", { entry: { entry: "password", initial: "", text: "" } }],
    [
      "a caution without its fact",
      { cautions: [{ id: "a", advice: "", defersTo: "", sources: [] }] },
    ],
  ])("shows in place of %s that it can't be shown, and keeps the other cells", (_, more) => {
    const good = { id: "rebuild.md#mulch", cautions: [], problems: [], shown: { kind: "nothing" } };
    const cells = cellsOf(values(state(more), good));
    expect(cells?.[0]).toMatchObject({ id: "rebuild.md#fill", error: { kind: "formula" } });
    expect(cells?.[0]?.shown).toBeUndefined();
    expect(cells?.[1]).toEqual(good);
  });

  it("spends one budget, so that many small parts can't hide a flood", () => {
    const row = Array.from({ length: 100 }, () => figure);
    const rows = Array.from({ length: 10_000 }, () => row);
    const columns = [{ key: "a", title: "A", unit: "", align: "left" }];
    const cells = cellsOf(values(state({ shown: { kind: "table", columns, rows, more: 0 } })));
    expect(cells?.[0]?.error).toBeDefined();
  });

  it("takes a garden of 2,000 beds", () => {
    const row = Array.from({ length: 12 }, () => figure);
    const rows = Array.from({ length: 2_000 }, () => row);
    const columns = [{ key: "a", title: "A", unit: "", align: "left" }];
    const cells = cellsOf(values(state({ shown: { kind: "table", columns, rows, more: 0 } })));
    expect(cells?.[0]?.error).toBeUndefined();
  });
});

describe("FloodGate", () => {
  it("admits so many in a second and no more", () => {
    const gate = new FloodGate({ messages: 3 });
    expect([0, 1, 2, 3, 999].map((at) => gate.admits(at))).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
    expect(gate.admits(1_000)).toBe(true);
  });

  it("counts what they hold, and those of no known kind", () => {
    const large = new FloodGate({ characters: 100 });
    expect([60, 40, 1].map((characters) => large.took({ parts: 1, characters }, true))).toEqual([
      true,
      true,
      false,
    ]);
    const odd = new FloodGate({ malformed: 1 });
    expect([
      odd.took({ parts: 0, characters: 0 }, false),
      odd.took({ parts: 0, characters: 0 }, false),
    ]).toEqual([true, false]);
  });
});

function deep(levels: number): unknown {
  return levels === 0 ? "end" : [1, "g", {}, [deep(levels - 1)]];
}
