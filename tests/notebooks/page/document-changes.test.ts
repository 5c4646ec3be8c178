import { describe, expect, it } from "vitest";
import { documentsOf, writeNotebook } from "../../../notebooks/engine/document/index.ts";
import { Book } from "../../../notebooks/engine/page/book.ts";
import { DocumentChanges } from "../../../notebooks/engine/page/document-changes.ts";
import { GatheredProblems } from "../../../notebooks/engine/page/problem-places.ts";
import type { CellState } from "../../../notebooks/engine/types/index.ts";
import { cell, table } from "../run/fake-host.ts";

const readCsv = (text: string, name: string) => {
  const [head = "", ...lines] = text.split("\n");
  const rows = lines.map((line) => line.split(","));
  return { kind: "table", name, columns: head.split(","), rows, decimal: "." } as const;
};

function opened(text: string, more: Readonly<Record<string, string>> = {}) {
  const documents = documentsOf({ "a.md": text });
  const [main] = documents.values();
  if (!main) throw new Error("there is no document");
  const book = new Book(main, documents, {}, readCsv);
  const told: string[][] = [];
  const kept: [string, string][] = [];
  const changes = new DocumentChanges({
    book,
    keepText: (file, kept_) => kept.push([file, kept_]),
    loadMore: async (open) => ({
      documents: new Map([...documentsOf(more)].filter(([file]) => !open.has(file))),
      entered: { "b.md#c": "7" },
    }),
    changed: (cells) => told.push([...cells].sort()),
  });
  return { book, changes, told, kept };
}

describe("documents given new texts", () => {
  const text = cell("spin", "1") + cell("other", "2") + table("beds", "bed\nA");

  it("tell only the cells whose formula or rows are others, whatever moved", () => {
    const { changes, told, kept } = opened(text);
    const moved = `# Title\n\n${text.replace("2\n", "3\n")}`;
    changes.put(new Map([["a.md", moved]]));
    expect(told).toEqual([["a.md#other"]]);
    expect(kept).toEqual([["a.md", moved]]);
    changes.put(new Map([["a.md", moved.replace("\nA\n", "\nB\n") + cell("more", "4")]]));
    expect(told.at(-1)).toEqual(["a.md#beds", "a.md#more"]);
  });

  it("are not kept again where another tab wrote them", () => {
    const { book, changes, kept } = opened(text);
    changes.take(new Map([["a.md", cell("only", "1")]]));
    expect(book.main.blocks.filter(({ kind }) => kind === "cell")).toHaveLength(1);
    expect(kept).toEqual([]);
  });

  it("bring in a notebook they come to use, with what is entered in it", async () => {
    const { book, changes, told } = opened(text, { "b.md": cell("c", "5") });
    changes.put(new Map([["a.md", `${text}\`\`\`uses b.md\nc\n\`\`\`\n`]]));
    await expect.poll(() => [...book.documents.keys()].sort()).toEqual(["a.md", "b.md"]);
    expect(book.entered.get("b.md#c")).toBe("7");
    expect(told.at(-1)).toEqual(["b.md#c"]);
    expect(writeNotebook(book.main)).toContain("uses b.md");
  });
});

describe("what a cell says of a table", () => {
  it("is forgotten with the cell", () => {
    const { book } = opened(cell("reads", "beds.rows") + table("beds", "bed\nA"));
    const problems = new GatheredProblems(book);
    const problem = {
      code: "unreadable",
      path: ["beds", 1, "bed"],
      allowed: "a name",
      received: "A",
      remedy: "Write a name.",
      sentence: "It can't be read.",
    };
    const state: CellState = { id: "a.md#reads", cautions: [], problems: [problem] };
    expect([...problems.take(state)]).toEqual(["a.md#beds"]);
    expect(problems.of("a.md#beds")).toHaveLength(1);
    expect([...problems.forget(["a.md#reads"])]).toEqual(["a.md#beds"]);
    expect(problems.of("a.md#beds")).toEqual([]);
  });
});
