import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileNotebook } from "../../../notebooks/engine/compile/index.ts";
import { renameCell } from "../../../notebooks/engine/compile/rename.ts";
import { readNotebook } from "../../../notebooks/engine/document/index.ts";

const cell = (name: string, formula: string) =>
  `\`\`\`js cell ${name} pinned "Side"\n${formula}\n\`\`\`\n`;

function documentsOf(texts: Readonly<Record<string, string>>) {
  return new Map(Object.entries(texts).map(([file, text]) => [file, readNotebook(text, file)]));
}

/** The text of `a.md` after `side` has become `edge` in it. */
function renamedText(text: string): string | undefined {
  const done = renameCell(documentsOf({ "a.md": text }), {
    file: "a.md",
    from: "side",
    to: "edge",
  });
  return done.ok ? done.texts.get("a.md") : undefined;
}

/** What is in the way of calling `side` so. */
function why(text: string, to = "edge"): string | undefined {
  const done = renameCell(documentsOf({ "a.md": text }), { file: "a.md", from: "side", to });
  return done.ok ? undefined : done.why;
}

const own = cell("side", "1");

describe("a cell gets another name", () => {
  it("where it is defined; the rest of its line stays", () => {
    expect(renamedText(own)).toBe(cell("edge", "1"));
    expect(renamedText("~~~csv table side\nside\n1\n~~~\n")).toBe(
      "~~~csv table edge\nside\n1\n~~~\n",
    );
  });

  it.each([
    ["side * 2 + side", "edge * 2 + edge"],
    ["bed.side + side", "bed.side + edge"],
    ["({ side, other: side })", "({ side: edge, other: edge })"],
    ['"side" + `$' + "{side} side`", '"side" + `$' + "{edge} side`"],
    ["rows.map((side) => side) // side", "rows.map((side) => side) // side"],
    ["inside + side$ + sides", "inside + side$ + sides"],
    ["const a = side;\nreturn a.side", "const a = edge;\nreturn a.side"],
    ["side *", "edge *"],
  ])("in the formula %s", (formula, wanted) => {
    expect(renamedText(own + cell("b", formula))).toBe(cell("edge", "1") + cell("b", wanted));
  });

  it("in sentences, but not in code that is only shown", () => {
    const words = "It is `fig side`, `` fig side `` or `side`.\n\n    `fig side`\n\n";
    expect(renamedText(words + own)).toBe(
      `It is \`fig edge\`, \`\` fig edge \`\` or \`side\`.\n\n    \`fig side\`\n\n${cell("edge", "1")}`,
    );
  });

  it("in the documents that use it, and those that use it from them", () => {
    const documents = documentsOf({
      "a.md": own,
      "b.md": `\`\`\`uses a.md\nside, inside\n\`\`\`\n${cell("b", "side")}`,
      "c.md": `\`\`\`uses b.md\nside\n\`\`\`\n${cell("c", "side")}`,
      "d.md": cell("side", "side2"),
    });
    const done = renameCell(documents, { file: "a.md", from: "side", to: "edge" });
    expect(done.ok && Object.fromEntries(done.texts)).toEqual({
      "a.md": cell("edge", "1"),
      "b.md": `\`\`\`uses a.md\nedge, inside\n\`\`\`\n${cell("b", "edge")}`,
      "c.md": `\`\`\`uses b.md\nedge\n\`\`\`\n${cell("c", "edge")}`,
    });
  });
});

describe("a name is refused", () => {
  it.each([
    ["no name", own, "two words", /letters, digits/],
    ["a word of formulas", own, "return", /language of formulas/],
    ["taken by a cell", own + cell("edge", "2"), "edge", /another cell/],
    ["taken by what is used", `\`\`\`uses b.md\nedge\n\`\`\`\n${own}`, "edge", /another cell/],
    ["named by a formula already", own + cell("b", "edge(1)"), "edge", /formula of b/],
    [
      "a formula's own",
      own + cell("b", "rows.map((edge) => edge * side)"),
      "edge",
      /something of its own/,
    ],
  ])("that is %s", (_, text, to, words) => {
    expect(why(text, to)).toMatch(words);
  });

  it("only where it is in the way", () => {
    expect(why(own + cell("b", "rows.map((edge) => edge) + side"))).toBeUndefined();
  });
});

describe("only what means the cell is renamed", () => {
  const rename = (texts: Readonly<Record<string, string>>, from = "side") => {
    const done = renameCell(documentsOf(texts), { file: "a.md", from, to: "edge" });
    return done.ok ? { ...Object.fromEntries(done.texts), renamed: [...done.renamed] } : done.why;
  };

  it("and not another document's own cell of that name", () => {
    const list = "```uses a.md\nside\n```\n";
    const hidden = `${list}${own}${cell("b", "side")}It is \`fig side\`.\n`;
    expect(rename({ "a.md": own, "b.md": hidden })).toEqual({
      "a.md": cell("edge", "1"),
      "b.md": hidden.replace(list, "```uses a.md\nedge\n```\n"),
      renamed: [["a.md#side", "a.md#edge"]],
    });
  });

  it("and not the cell that was brought in first", () => {
    const rest = cell("b", "side");
    const lists = (name: string) =>
      `\`\`\`uses c.md\nside\n\`\`\`\n\`\`\`uses a.md\n${name}\n\`\`\`\n`;
    expect(rename({ "a.md": own, "b.md": lists("side") + rest, "c.md": own })).toMatchObject({
      "b.md": lists("edge") + rest,
    });
  });

  it("and of two cells of one name the one that is meant", () => {
    const third = cell("b", "side");
    const text = own + cell("side", "2") + third;
    expect(rename({ "a.md": text }, "side/2")).toEqual({
      "a.md": own + cell("edge", "2") + third,
      renamed: [["a.md#side/2", "a.md#edge"]],
    });
    // What names it goes with the first, as it did.
    expect(rename({ "a.md": text })).toEqual({
      "a.md": cell("edge", "1") + cell("side", "2") + cell("b", "edge"),
      renamed: [
        ["a.md#side", "a.md#edge"],
        ["a.md#side/2", "a.md#side"],
      ],
    });
    expect(rename({ "a.md": text }, "side/3")).toBe("a.md has no cell side/3.");
  });

  it("in sentences over lines, and in every line end", () => {
    for (const end of ["\n", "\r\n", "\r"]) {
      const words = (name: string) =>
        [
          "`a b",
          "c` and `fig",
          `${name}\` and \`fig ${name}\`.`,
          "",
          "```",
          "`fig side`",
          "```",
          "",
          "",
        ].join(end);
      expect(renamedText(words("side") + own)).toBe(words("edge") + cell("edge", "1"));
      const list = ["```uses side.md", "side", "```", ""].join(end);
      const done = renameCell(documentsOf({ "side.md": own, "b.md": list }), {
        file: "side.md",
        from: "side",
        to: "edge",
      });
      expect(done.ok && done.texts.get("b.md")).toBe(
        ["```uses side.md", "edge", "```", ""].join(end),
      );
    }
  });
});

describe("after any renaming", () => {
  const name = fc.constantFrom("a", "b", "c", "d");
  const formula = fc.oneof(
    fc.constantFrom("1", "inch * 2", '"a b" + a', "b.a + c", "rows => rows.a"),
    fc
      .tuple(
        fc.constantFrom("X + Y", "[X].map((Y) => X * Y)", `f(\`\${X} Y\`)`, "({ X: Y })"),
        name,
        name,
      )
      .map(([form, x, y]) => form.replaceAll("X", x).replaceAll("Y", y)),
    fc.tuple(name).map(([x]) => `const q = ${x};\nreturn q /* ${x} */;`),
  );
  const cells = fc
    .uniqueArray(fc.tuple(name, formula), { selector: ([one]) => one, minLength: 1 })
    .map((list) =>
      list.map(([one, text]) => `${cell(one, text)}\nSo \`fig ${one}\` it is.\n\n`).join(""),
    );
  const texts = fc.tuple(cells, fc.uniqueArray(name), cells).map(([first, listed, second]) => ({
    "a.md": first,
    "b.md": `\`\`\`uses a.md\n${listed.join("\n")}\n\`\`\`\n\n${second}`,
  }));

  /** What takes what, with problems, by id. */
  const graph = (
    documents: ReturnType<typeof documentsOf>,
    renaming: ReadonlyMap<string, string>,
  ) =>
    ["a.md", "b.md"].map((main) => {
      const names = new Set(["inch", "f"]);
      const program = compileNotebook({ main, documents, names });
      const idOf = (id: string) => renaming.get(id) ?? id;
      const made = program.cells.map(({ id, takes, problem, namesUsed }) => [
        idOf(id),
        takes.map(idOf).sort(),
        // That a cell which is not listed has the name a formula wants is only a hint.
        problem?.code.replace("not-shared", "not-defined"),
        namesUsed.map(({ cell: of, places }) => [of && idOf(of), places.length]),
      ]);
      // That a new name hides one of the library is told, and no change of what is meant.
      const remarks = program.problems.map(({ code, line }) => [code, line]);
      return [new Map(made.map(([id, ...rest]) => [id, rest])), remarks];
    });

  it("the graph is the same with the name replaced, and renaming back gives the same bytes", () => {
    let renamings = 0;
    fc.assert(
      fc.property(texts, name, fc.constantFrom("edge", "inch", "c"), (written, from, to) => {
        const documents = documentsOf(written);
        // A list that already names what was not there is mended by the new name.
        const lists = documents.get("b.md")?.blocks[0];
        if (lists?.kind === "uses" && lists.names.some((one) => one.name === to)) return;
        const done = renameCell(documents, { file: "a.md", from, to });
        if (!done.ok) return;
        const after = documentsOf({ ...written, ...Object.fromEntries(done.texts) });
        expect([...done.renamed]).toEqual([[`a.md#${from}`, `a.md#${to}`]]);
        expect(graph(after, new Map())).toEqual(graph(documents, done.renamed));
        const back = renameCell(after, { file: "a.md", from: to, to: from });
        // The old name may be that of another cell that hid this one.
        if (!back.ok) return;
        renamings += 1;
        for (const [file, text] of back.texts)
          expect(text).toBe(written[file as keyof typeof written]);
      }),
      { numRuns: 600 },
    );
    expect(renamings).toBeGreaterThan(40);
  });
});
