import { describe, expect, it } from "vitest";
import { openBook, wordsNamed } from "../../../notebooks/engine/page/book.ts";
import { GatheredProblems } from "../../../notebooks/engine/page/problem-places.ts";
import type { CellState } from "../../../notebooks/engine/types/index.ts";

const files: Readonly<Record<string, string>> = {
  "rebuild.md": `# Spring rebuild

\`\`\`uses garden.md
beds
\`\`\`

\`\`\`js cell kerf "Kerf of the saw"
lengthEntry("1/8 in")
\`\`\`

\`\`\`js cell total pinned "To pay"
aq.table(beds)
\`\`\`
`,
  "garden.md": `# The garden

\`\`\`csv table beds "Beds"
bed,length
1,8 ft
\`\`\`

\`\`\`csv table onHand
section
2x12
\`\`\`
`,
};

const readCsv = (text: string, name: string) => {
  const [head = "", ...rows] = text.split("\n").filter((line) => line !== "");
  return {
    kind: "table" as const,
    name,
    columns: head.split(","),
    rows: rows.map((row) => row.split(",")),
    decimal: "." as const,
  };
};

async function book(entered = {}) {
  const opened = await openBook({
    main: "rebuild.md",
    load: async (file) => files[file],
    loadEntered: async () => entered,
    readCsv,
  });
  if (!opened) throw new Error("not opened");
  return opened;
}

describe("an open notebook", () => {
  it("reads what it uses, and knows whose a name is", async () => {
    const { documents, ...opened } = await book();
    expect([...documents.keys()]).toEqual(["rebuild.md", "garden.md"]);
    const read = await book();
    expect(read.find("kerf", "rebuild.md")).toBe("rebuild.md#kerf");
    expect(read.find("beds", "rebuild.md")).toBe("garden.md#beds");
    expect(read.find("onHand", "rebuild.md")).toBeUndefined();
    expect(read.find("onHand", "garden.md")).toBe("garden.md#onHand");
    expect(opened.main.title).toBe("Spring rebuild");
  });

  it("has the document's rows until others are entered", async () => {
    const rows = [["9", "6 ft"]];
    const mine = { kind: "table", name: "beds", columns: ["bed", "length"], rows, decimal: "." };
    expect((await book()).table("garden.md#beds").rows).toEqual([["1", "8 ft"]]);
    expect((await book({ "garden.md#beds": mine })).table("garden.md#beds").rows).toEqual(rows);
  });

  it("knows its titles, its pinned answers and the larger parts its formulas name", async () => {
    const read = await book();
    expect(read.title("garden.md#beds")).toBe("Beds");
    expect(read.pinned()).toEqual(["rebuild.md#total"]);
    expect(wordsNamed(["aq", "Plot"], read.documents)).toEqual(["aq"]);
  });

  it("is none where there is no such file", async () => {
    const options = { load: async () => undefined, loadEntered: async () => ({}), readCsv };
    expect(await openBook({ main: "none.md", ...options })).toBeUndefined();
  });
});

describe("problems by their place", () => {
  const problem = (path: readonly (string | number)[]) => ({
    code: "unreadable",
    path,
    allowed: "a length",
    received: "6 fot",
    remedy: "Write 6 ft.",
    sentence: "6 fot is no length",
  });
  const state = (problems: readonly ReturnType<typeof problem>[]): CellState => ({
    id: "rebuild.md#total",
    cautions: [],
    problems,
  });

  it("are found by table, row and column, whichever cell reported them", async () => {
    const gathered = new GatheredProblems(await book());
    const touched = gathered.take(state([problem(["beds", 3, "length"]), problem(["kerf"])]));
    expect([...touched]).toEqual(["garden.md#beds", "rebuild.md#kerf"]);
    expect(gathered.of("garden.md#beds")).toMatchObject([{ row: 3, column: "length" }]);
    expect(gathered.of("rebuild.md#kerf")).toMatchObject([{ row: undefined }]);
  });

  it("are said once though many cells report them, and gone when none does", async () => {
    const gathered = new GatheredProblems(await book());
    gathered.take(state([problem(["beds", 3, "length"])]));
    gathered.take({ ...state([problem(["beds", 3, "length"])]), id: "rebuild.md#kerf" });
    expect(gathered.of("garden.md#beds")).toHaveLength(1);
    gathered.take(state([]));
    expect(gathered.of("garden.md#beds")).toHaveLength(1);
    expect([...gathered.take({ ...state([]), id: "rebuild.md#kerf" })]).toEqual(["garden.md#beds"]);
    expect(gathered.of("garden.md#beds")).toEqual([]);
  });

  it("mark every place that a problem concerns", async () => {
    const gathered = new GatheredProblems(await book());
    gathered.take(state([{ ...problem(["beds", 3, "bed"]), also: [["beds", 1, "bed"]] } as never]));
    expect(gathered.of("garden.md#beds").map(({ row }) => row)).toEqual([3, 1]);
  });
});
