import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCsv, writeCsv } from "../../../lib/index.ts";
import { documentsOf, readNotebook } from "../../../notebooks/engine/document/index.ts";
import { pack, unpack } from "../../../notebooks/engine/document/seldom.ts";
import type { Entered } from "../../../notebooks/engine/types/index.ts";

const cell = (name: string, formula = "1") => `\`\`\`js cell ${name}\n${formula}\n\`\`\`\n`;
const table = (name: string, csv: string) => `\`\`\`csv table ${name}\n${csv}\`\`\`\n`;
const uses = (file: string, names: string) => `\`\`\`uses ${file}\n${names}\n\`\`\`\n`;

function packed(texts: Readonly<Record<string, string>>, entered: Entered = {}): string {
  const [main = ""] = Object.keys(texts);
  return pack({ main, documents: documentsOf(texts), entered, writeCsv });
}

const plan = `# Plan\n\n${uses("garden.md", "beds")}\n${cell("kerf", 'length("1/8 in")')}`;
const garden = `# Garden\n\n${table("beds", "bed,length\nA,8 ft\n")}`;

describe("a notebook is saved as one file", () => {
  it("as it is, where it uses nothing and nothing is entered", () => {
    expect(packed({ "own.md": cell("a") })).toBe(cell("a"));
  });

  it("with what it uses and what was typed under a heading", () => {
    const text = packed(
      { "plan.md": plan, "garden.md": garden },
      {
        "plan.md#kerf": "3/32 in",
        "garden.md#beds": readCsv("bed,length\nA,8 ft\nB,12 ft", "beds"),
      },
    );
    expect(text).toBe(
      `${plan}

## Carried inside this file

What this notebook was worked out with: the notebooks it uses, and what was typed into its fields.

\`\`\`\`markdown notebook garden.md
# Garden

\`\`\`csv table beds
bed,length
A,8 ft
B,12 ft
\`\`\`
\`\`\`\`

\`\`\`\`csv entered
cell,text
kerf,3/32 in
\`\`\`\`
`,
    );
    // Elsewhere it is a notebook like any other, whatever is carried.
    expect(readNotebook(text, "plan.md").problems).toEqual([]);
  });

  it("with every notebook of a chain, each once", () => {
    const text = packed({
      "a.md": uses("b.md", "x") + uses("c.md", "y"),
      "b.md": uses("c.md", "y") + cell("x"),
      "c.md": uses("d/e.md", "z") + cell("y"),
      "d/e.md": cell("z"),
      "other.md": cell("o"),
    });
    expect([...unpack(text, "a.md").carried.keys()]).toEqual(["b.md", "c.md", "d/e.md"]);
  });

  it("with a table that its block can't hold as a row of its own", () => {
    const beds = { ...readCsv("bed,length\nA,8 ft", "beds"), rows: [["A\rB", "8 ft"]] };
    const text = packed({ "garden.md": garden }, { "garden.md#beds": beds });
    const { entered } = unpack(text, "garden.md");
    expect(readCsv(entered["garden.md#beds"] ?? "", "beds")).toEqual(beds);
  });
});

describe("what stays as it is, and is told", () => {
  const saved = packed({ "plan.md": plan, "garden.md": garden }, { "plan.md#kerf": "1 in" });
  const told = (text: string) => unpack(text, "plan.md").problems.map(({ message }) => message);

  it("nothing, in a file as it was saved", () => {
    expect(unpack(saved, "plan.md").problems).toEqual([]);
  });

  it("a notebook carried twice: the first counts", () => {
    const second = "````markdown notebook garden.md\n# Other\n````\n";
    const { text, carried, problems } = unpack(`${saved}\n${second}`, "plan.md");
    expect(carried.get("garden.md")).toBe(garden);
    expect(text).toContain(second);
    expect(problems).toMatchObject([
      { code: "not-carried", names: ["garden.md"], line: saved.split("\n").length + 1 },
    ]);
    expect(told(`${saved}\n${second}`)[0]).toMatch(/twice, and the first counts/);
    // Saved once more and opened once more, the first still counts.
    const again = pack({
      main: "plan.md",
      documents: documentsOf({ "plan.md": text, ...Object.fromEntries(carried) }),
      entered: {},
      writeCsv,
    });
    expect(unpack(again, "plan.md")).toMatchObject({ text, carried });
  });

  it.each([
    ["a name that no file has", "````markdown notebook ../garden.md\n````\n", /not the name/],
    ["no name", "````markdown notebook\n````\n", /names no file/],
    ["its own name", "````markdown notebook plan.md\n````\n", /the file it is in/],
    ["a fence never closed", "````markdown notebook b.md\n# B\n", /never closed/],
    ["rows of another kind", "```csv entered\nname,value\na,1\n```\n", /first line/],
  ])("a block with %s", (_, block, words) => {
    const { text, carried } = unpack(`${saved}\n${block}`, "plan.md");
    expect(told(`${saved}\n${block}`)).toEqual([expect.stringMatching(words)]);
    expect(text.startsWith(plan)).toBe(true);
    expect(text.endsWith(block)).toBe(true);
    expect([...carried.keys()]).toEqual(["garden.md"]);
  });

  it("a block before the heading, or without one", () => {
    const text = `${cell("a")}\n\`\`\`csv entered\ncell,text\na,2\n\`\`\`\n`;
    expect(unpack(text, "a.md")).toMatchObject({ text, entered: {} });
    expect(unpack(text, "a.md").problems[0]?.message).toMatch(/under the heading/);
    expect(unpack(text, "a.md").problems[0]?.line).toBe(5);
  });

  it("rows that can't be read; the others count", () => {
    const rows = 'cell,text,written\nkerf,1 in\nkerf,2 in\n,x\n"a,b\nb,nonsense,json\nc,1,2,3\n';
    const at = `${plan}\n\n## Carried inside this file\n\n\`\`\`csv entered\n${rows}\`\`\`\n`;
    const { text, entered, problems } = unpack(at, "plan.md");
    expect(entered).toEqual({ "plan.md#kerf": "1 in" });
    expect(problems.map(({ line }) => line)).toEqual([17, 18, 19, 20, 21]);
    expect(text).toContain(
      '```csv entered\ncell,text,written\nkerf,2 in\n,x\n"a,b\nb,nonsense,json\nc,1,2,3\n```\n',
    );
  });

  it("what was typed for a cell that is not there is kept", () => {
    const text = packed({ "plan.md": plan, "garden.md": garden }, { "garden.md#gone": "1" });
    const { entered, problems } = unpack(text, "plan.md");
    expect(entered).toEqual({ "garden.md#gone": "1" });
    expect(problems).toMatchObject([{ code: "entry-without-cell", names: ["gone"] }]);
  });
});

describe("a file made to be long to read", () => {
  const heading = "## Carried inside this file\n";
  it.each([
    ["headings in fences", `${`\`\`\`\n${heading}\`\`\`\n`.repeat(30_000)}`],
    [
      "rows for one cell",
      `${heading}\`\`\`csv entered\ncell,text\n${"a,1\n".repeat(60_000)}\`\`\`\n`,
    ],
    ["fields", `${heading}\`\`\`csv entered\ncell,text\n${'"a",'.repeat(200_000)}\n\`\`\`\n`],
    ["notebooks", heading + "````markdown notebook a.md\n````\n".repeat(20_000)],
  ])(
    "by many %s is taken apart in a few seconds",
    (_, text) => {
      const start = performance.now();
      unpack(text, "main.md");
      expect(performance.now() - start).toBeLessThan(15_000);
    },
    60_000,
  );
});

const piece = fc.constantFrom(
  ..."```|~~~|````|`````|js cell a|csv table t|uses g.md|markdown notebook g.md|csv entered|cell,text|## Carried inside this file|\n|\n|\r\n|\r| |    |> |- |x|\uFEFF|\u0000|===|# ".split(
    "|",
  ),
);
const anyText = fc.oneof(
  fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join("")),
  fc.string({ unit: "binary", maxLength: 30 }),
);

describe("whatever is saved comes back", () => {
  const file = fc.constantFrom(
    "b.md",
    "sub/c.md",
    "a & b.md",
    "x&amp;y.md",
    "`t`.md",
    "u unended.md",
  );
  const typed = fc.oneof(
    fc.constantFrom(
      "=1+1",
      "+2",
      "-3",
      "@x",
      "'=",
      '2" x 4"',
      "a,b",
      "a\nb",
      "a\r\nb",
      "",
      " x ",
      "````",
      "\u0000",
    ),
    fc.string({ unit: "binary" }),
  );

  it("documents byte for byte, and what was typed", () => {
    fc.assert(
      fc.property(
        anyText,
        fc.uniqueArray(fc.tuple(file, anyText), { selector: ([name]) => name }),
        fc.array(fc.tuple(fc.constantFrom("kerf", "a,b", "c#d", ' "q'), typed)),
        (own, others, typing) => {
          const list = others.map(([name]) => {
            const marks = name.includes("`") ? "~~~" : "```";
            return `${marks}uses ${name.replace("&amp;", "\\&amp;")}\nx\n${marks}\n`;
          });
          const main = `${list.join("")}\n${own}`;
          const needed = new Set(
            readNotebook(main, "main.md").blocks.flatMap((b) =>
              b.kind === "uses" ? [b.file] : [],
            ),
          );
          const documents = documentsOf({ "main.md": main, ...Object.fromEntries(others) });
          const entered: Record<`${string}#${string}`, string> = {};
          for (const [name, text] of typing) entered[`main.md#${name}`] = text;
          for (const [name] of others) entered[`${name}#z`] = "=1";
          const text = pack({ main: "main.md", documents, entered, writeCsv });
          const back = unpack(text, "main.md");
          expect(back.entered).toEqual(entered);
          expect(back.text.startsWith(main)).toBe(true);
          // A fence left open at the end is closed by saving.
          const rest = back.text.slice(main.length);
          expect(rest).toMatch(/^(?:(?:\r\n|\n|\r)? {0,3}(?:`{3,}|~{3,})(?:\r\n|\n|\r))?$/);
          for (const [name, wanted] of others) {
            expect(needed).toContain(name);
            expect(back.carried.get(name)).toBe(wanted);
          }
        },
      ),
      { numRuns: 700 },
    );
  });

  it("and any text at all can be taken apart", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const back = unpack(text, "main.md");
        if (
          back.carried.size === 0 &&
          Object.keys(back.entered).length === 0 &&
          !text.includes("## Carried")
        )
          expect(back.text).toBe(text);
      }),
      { numRuns: 3000 },
    );
  });

  it("tables, marked for spreadsheets or not", () => {
    const field = fc.oneof(
      fc.constantFrom("=1", "-2", "'=3", "8' 3\"", "a,b", "a\nb", ""),
      fc.string(),
    );
    fc.assert(
      fc.property(
        fc.array(fc.tuple(field, field), { maxLength: 5 }),
        fc.boolean(),
        (rows, crlf) => {
          const own = crlf ? garden.replaceAll("\n", "\r\n") : garden;
          const beds = { ...readCsv("bed,length", "beds"), rows };
          const text = packed({ "garden.md": own }, { "garden.md#beds": beds });
          const back = unpack(text, "garden.md");
          const [block] = readNotebook(back.text, "garden.md").blocks.filter(
            (one) => one.kind === "table",
          );
          const csv = back.entered["garden.md#beds"] ?? (block?.kind === "table" ? block.csv : "");
          expect(readCsv(csv, "beds").rows).toEqual(rows);
        },
      ),
    );
  });
});
