import { describe, expect, it } from "vitest";
import { changeWords } from "../../../../notebooks/engine/page/keep/change-words.ts";
import { differences } from "../../../../notebooks/engine/page/keep/differences.ts";
import { reasonWords } from "../../../../notebooks/engine/page/keep/reason-words.ts";
import { toBringBack } from "../../../../notebooks/engine/page/keep/to-bring-back.ts";
import { whenInWords } from "../../../../notebooks/engine/page/keep/when.ts";
import type { StateContent, StateRecord } from "../../../../notebooks/engine/store/index.ts";

const table = (...rows: string[]) => ({
  kind: "table" as const,
  name: "beds",
  columns: ["bed"],
  rows: rows.map((row) => [row]),
  decimal: "." as const,
});

const text = (formula: string, words: string, csv = "bed\n1") =>
  `# Plot\n\n${words}\n\nThe end.\n\n\`\`\`js cell total "In all"\n${formula}\n\`\`\`\n\n\`\`\`csv table beds\n${csv}\n\`\`\`\n`;

const content = (more: Partial<StateContent>): StateContent => ({
  files: ["plot.md", "garden.md"],
  texts: {},
  entered: {},
  ...more,
});

const titleOf = (id: string) => `“${id.slice(id.indexOf("#") + 1)}”`;

describe("what differs", () => {
  it("is entries and tables, put back or begun", () => {
    const was = content({
      entered: { "plot.md#kerf": "1/8", "plot.md#lap": "ends", "garden.md#beds": table("1") },
    });
    const is = content({
      entered: { "plot.md#kerf": "1/4", "plot.md#cap": "2x6", "garden.md#beds": table("1", "2") },
    });
    const all = differences(was, is);
    expect(all).toEqual([
      { what: "entry", id: "plot.md#kerf", was: "1/8", is: "1/4" },
      { what: "entry", id: "plot.md#lap", was: "ends", is: undefined },
      { what: "table", id: "garden.md#beds", was: table("1"), is: table("1", "2") },
      { what: "entry", id: "plot.md#cap", was: undefined, is: "2x6" },
    ]);
    expect(changeWords(all, titleOf)).toBe("3 entries, table “beds”");
    expect(differences(was, was)).toEqual([]);
    expect(changeWords([], titleOf)).toBe("nothing");
  });

  it("is no business of documents that only one of them knows", () => {
    const was = content({ entered: { "plot.md#kerf": "1/8", "garden.md#beds": table("1") } });
    const is = content({ files: ["plot.md"], entered: { "plot.md#kerf": "1/8" } });
    expect(differences(was, is)).toEqual([]);
  });

  it("is formulas, given rows and words, by themselves", () => {
    const was = content({ texts: { "plot.md": text("1 + 1", "Four beds.") } });
    const formula = content({ texts: { "plot.md": text("1 + 2", "Four beds.") } });
    expect(differences(was, formula)).toEqual([
      { what: "formula", id: "plot.md#total", was: "1 + 1", is: "1 + 2" },
    ]);
    expect(changeWords(differences(was, formula), titleOf)).toBe("formula of “total”");
    const words = content({ texts: { "plot.md": text("1 + 1", "Five beds.") } });
    expect(differences(was, words)).toEqual([
      { what: "words", file: "plot.md", was: ["Four beds."], is: ["Five beds."] },
    ]);
    expect(changeWords(differences(was, words), titleOf)).toBe("the words of plot.md");
    const rows = content({ texts: { "plot.md": text("1 + 1", "Four beds.", "bed\n1\n2") } });
    expect(differences(was, rows)).toMatchObject([{ what: "rows", id: "plot.md#beds" }]);
  });

  it("is a cell that is new or gone", () => {
    const was = content({ texts: { "plot.md": text("1 + 1", "Four beds.") } });
    const is = content({ texts: { "plot.md": "# Plot\n\nFour beds.\n\nThe end.\n" } });
    expect(differences(was, is)).toMatchObject([
      { what: "formula", id: "plot.md#total", was: "1 + 1", is: undefined },
      { what: "rows", id: "plot.md#beds", is: undefined },
    ]);
    expect(differences(is, was)).toMatchObject([
      { what: "formula", was: undefined },
      { what: "rows", was: undefined },
    ]);
  });

  it("is never nothing where the texts are not the same", () => {
    const was = content({ texts: { "plot.md": text("1", "A.\n\nB.") } });
    const is = content({ texts: { "plot.md": text("1", "B.\n\nA.") } });
    expect(differences(was, is)).toEqual([{ what: "words", file: "plot.md", was: [], is: [] }]);
  });
});

describe("bringing a state back", () => {
  const state = (more: Partial<StateRecord>): StateRecord => ({
    kind: "state",
    version: 1,
    main: "plot.md",
    number: 1,
    at: "",
    why: "typing",
    apart: false,
    ...content({}),
    ...more,
  });
  const now = (more: Partial<StateContent>, apart = false) => ({
    ...content(more),
    main: "plot.md",
    apart,
  });

  it("changes just what differs, texts and entries together", () => {
    const back = toBringBack(
      state({
        texts: { "plot.md": "# then\n" },
        entered: { "plot.md#kerf": "1/8", "plot.md#same": "x" },
      }),
      now({
        texts: { "plot.md": "# now\n" },
        entered: { "plot.md#same": "x", "garden.md#beds": table("1") },
      }),
    );
    expect([...back.texts]).toEqual([["plot.md", "# then\n"]]);
    expect([...back.entered]).toEqual([
      ["plot.md#kerf", "1/8"],
      ["garden.md#beds", undefined],
    ]);
    expect(back.stays).toEqual([]);
  });

  it("leaves alone what is no part of the notebook now, and says so", () => {
    const back = toBringBack(
      state({
        texts: { "plot.md": "# then\n", "gone.md": "# gone\n" },
        files: ["plot.md", "gone.md"],
        entered: { "gone.md#x": "1" },
      }),
      now({ texts: { "plot.md": "# then\n" }, entered: { "garden.md#beds": "kept" } }),
    );
    expect(back.texts.size + back.entered.size).toBe(0);
    expect(back.stays).toHaveLength(2);
  });

  it("does not put what was kept apart into the reader's own garden", () => {
    const then = state({ apart: true, entered: { "garden.md#beds": "theirs", "plot.md#x": "1" } });
    const back = toBringBack(then, now({ entered: { "garden.md#beds": "mine" } }));
    expect([...back.entered]).toEqual([["plot.md#x", "1"]]);
    expect(back.stays[0]).toContain("garden.md");
    const same = toBringBack(then, now({ entered: { "garden.md#beds": "mine" } }, true));
    expect([...same.entered.keys()]).toEqual(["garden.md#beds", "plot.md#x"]);
  });
});

describe("words about a state", () => {
  const noon = new Date(2026, 3, 25, 12, 0);
  it.each([
    [new Date(2026, 3, 25, 9, 5), "today 9:05"],
    [new Date(2026, 3, 24, 23, 59), "yesterday 23:59"],
    [new Date(2026, 2, 3, 14, 5), "3 March 14:05"],
    [new Date(2025, 11, 31, 0, 0), "31 December 2025 0:00"],
  ])("say when: %s", (date, words) => {
    expect(whenInWords(date.toISOString(), noon)).toBe(words);
  });

  it("say when in a state of a time nobody knows", () => {
    expect(whenInWords("once", noon)).toBe("once");
  });

  it("say why, where that is worth saying", () => {
    expect(reasonWords({ why: "typing" })).toBe("");
    expect(reasonWords({ why: "from a file", plan: "Cedar" })).toBe(
      "Came with a file of everything: the plan “Cedar”",
    );
  });
});
