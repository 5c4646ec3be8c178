import { describe, expect, it } from "vitest";
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
