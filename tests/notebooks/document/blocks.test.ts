import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readNotebook } from "../../../notebooks/engine/document/index.ts";
import {
  freeName,
  withBlockAdded,
  withBlockDuplicated,
  withBlockMoved,
  withBlockRemoved,
  withHints,
  wordsFor,
} from "../../../notebooks/engine/document/seldom.ts";

const cell = (name: string, formula = "1") => `\`\`\`js cell ${name}\n${formula}\n\`\`\`\n`;
const read = (text: string) => readNotebook(text, "own.md");

/** The cells and tables of a document, in their order. */
const names = (text: string) =>
  read(text).blocks.flatMap((block) => ("name" in block ? [block.name] : []));

const three = `# T\n\n${cell("a")}\n${cell("b")}\n${cell("c")}`;

describe("a block is added", () => {
  it("set off by blank lines, with what was there untouched", () => {
    expect(withBlockAdded(read(three), 3, "cell", { name: "d", content: "2" })).toBe(
      `# T\n\n${cell("a")}\n${cell("d", "2")}\n${cell("b")}\n${cell("c")}`,
    );
    expect(withBlockAdded(read("Words."), 1, "prose", { content: "More." })).toBe(
      "Words.\n\nMore.\n",
    );
  });

  it("in the line ends of the document, with a fence that its content cannot close", () => {
    const made = withBlockAdded(read("Words.\r\n"), 1, "cell", {
      name: "d",
      title: 'A 2" gap',
      content: "`\n```\n`",
    });
    expect(made).toBe('Words.\r\n\r\n````js cell d "A 2″ gap"\r\n`\r\n```\r\n`\r\n````\r\n');
    expect(read(made).blocks.at(-1)).toMatchObject({ name: "d", formula: "`\n```\n`" });
  });
});

describe("a block is moved", () => {
  it("past another, and back, and the blank lines do not pile up", () => {
    const up = withBlockMoved(read(three), 5, 3);
    expect(up).toBe(`# T\n\n${cell("a")}\n${cell("c")}\n${cell("b")}\n`);
    const index = read(up).blocks.findIndex((block) => "name" in block && block.name === "c");
    expect(names(withBlockMoved(read(up), index, index + 2))).toEqual(["a", "b", "c"]);
  });

  it("past the one that follows at once", () => {
    const close = read(cell("a") + cell("b") + cell("c"));
    expect(names(withBlockMoved(close, 0, 1))).toEqual(["b", "a", "c"]);
    expect(names(withBlockMoved(close, 1, 2))).toEqual(["a", "c", "b"]);
    expect(names(withBlockMoved(close, 2, 0))).toEqual(["c", "a", "b"]);
  });

  it("though its fence is never closed, without swallowing what it passes", () => {
    const open = `${cell("a")}\n\`\`\`js cell b\n2`;
    const moved = withBlockMoved(read(open), 2, 0);
    expect(names(moved)).toEqual(["b", "a"]);
    expect(read(moved).problems).toEqual([]);
  });
});

describe("a block is taken out or doubled", () => {
  it("and the others stay as they are", () => {
    expect(withBlockRemoved(read(three), 3)).toBe(`# T\n\n${cell("a")}\n${cell("c")}`);
    expect(withBlockRemoved(read(`One.\n${cell("a")}Two.\n`), 1)).toBe("One.\n\nTwo.\n");
  });

  it("under a name that is free", () => {
    const twice = withBlockDuplicated(read(three), 1);
    expect(names(twice)).toEqual(["a", "a2", "b", "c"]);
    expect(names(withBlockDuplicated(read(twice), 1))).toEqual(["a", "a3", "a2", "b", "c"]);
    expect(freeName(read(twice).blocks, "a2")).toBe("a3");
    expect(freeName(read("```uses garden.md\nbeds\n```\n").blocks, "beds")).toBe("beds2");
  });
});

describe("hints are changed", () => {
  const hinted = (info: string, hints: object) =>
    withHints(read(`\`\`\`${info}\n1\n\`\`\`\n`), 0, hints)
      .split("\n")[0]
      ?.slice(3);

  it.each([
    ["js cell soilDepth", { pinned: true }, "js cell soilDepth pinned"],
    ["js cell soilDepth", { title: "Depth" }, 'js cell soilDepth "Depth"'],
    ['js cell soilDepth pinned "Depth"', { pinned: false }, 'js cell soilDepth "Depth"'],
    ['js cell soilDepth "Depth"', { title: "Soil depth" }, "js cell soilDepth"],
    ["js cell a odd quiet", { folded: true }, "js cell a quiet folded odd"],
    ["csv  table  cell", { quiet: true }, "csv  table  cell quiet"],
  ])("%s with %o", (info, hints, wanted) => {
    expect(hinted(info, hints)).toBe(wanted);
  });
});

describe("nothing is swallowed and nothing lost", () => {
  it("though a document begins with a byte order mark", () => {
    const text = `\uFEFF${cell("a")}\n${cell("b")}`;
    const added = withBlockAdded(read(text), 0, "cell", { name: "c", content: "2" });
    expect(added).toBe(`\uFEFF${cell("c", "2")}\n${cell("a")}\n${cell("b")}`);
    expect(withBlockMoved(read(text), 0, 2)).toBe(`\uFEFF${cell("b")}\n${cell("a")}`);
    expect(withBlockRemoved(read(text), 0)).toBe(`\uFEFF${cell("b")}`);
  });

  it("though a fence in words is never closed", () => {
    const open = withBlockAdded(read("~~~text\nopen"), 1, "cell", { name: "b", content: "2" });
    expect(open).toBe(`~~~text\nopen\n~~~\n\n${cell("b", "2")}`);
    const words = withBlockAdded(read(cell("a")), 0, "prose", { content: "```\nopen" });
    expect(words).toBe(`\`\`\`\nopen\n\`\`\`\n\n${cell("a")}`);
  });

  it("while words are written", () => {
    const notebook = read("Words.\r\n");
    expect(wordsFor(notebook, "A\n```js cell x\n1", { isLast: false })).toBe(
      "A\r\n```js cell x\r\n1\r\n```\r\n",
    );
    expect(wordsFor(notebook, "A\n```", { isLast: true })).toBe("A\r\n```");
    expect(wordsFor(notebook, "A ```\n", { isLast: false })).toBe("A ```\r\n");
  });

  it("by a title with signs that mean something", () => {
    for (const title of ["R&amp;D", "a \\* b", "`x`", "&amp &", "~ \\"]) {
      const made = withBlockAdded(read("Words.\n"), 1, "cell", { name: "b", title, content: "2" });
      expect(read(made).blocks.at(-1)).toMatchObject({ name: "b", hints: { title } });
      const pinned = read(withHints(read(made), 1, { pinned: true }));
      expect(pinned.blocks.at(-1)).toMatchObject({ name: "b", hints: { title, pinned: true } });
    }
  });

  it("and a copy's title says that it is one", () => {
    const two = read(withBlockDuplicated(read('```csv table t folded "Prices"\na\n```\n'), 0));
    expect(two.blocks.at(-1)).toMatchObject({
      name: "t2",
      csv: "a",
      hints: { title: "Prices (copy)", folded: true },
    });
  });
});

describe("whatever is done to the blocks of a document", () => {
  const part = fc.constantFrom(cell("a"), cell("b"), "Words.\n", "\n", "# Head\n", "- a\n- b\n");
  const text = fc.array(part, { minLength: 1, maxLength: 8 }).map((parts) => parts.join(""));

  it("every cell comes through with its formula", () => {
    fc.assert(
      fc.property(text, fc.nat(), fc.nat(), (before, one, other) => {
        const notebook = read(before);
        const count = notebook.blocks.length;
        const [from, to] = [one % count, other % count];
        const cells = (of: string) => names(of).toSorted();
        expect(cells(withBlockMoved(notebook, from, to))).toEqual(cells(before));
        const added = withBlockAdded(notebook, from, "cell", { name: "new", content: "1" });
        expect(cells(added)).toEqual([...cells(before), "new"].toSorted());
        const taken = notebook.blocks[from];
        const left = names(withBlockRemoved(notebook, from));
        expect(left).toHaveLength(names(before).length - (taken && "name" in taken ? 1 : 0));
      }),
    );
  });

  it("the other blocks keep every byte, and what is added can be taken out again", () => {
    const blocks = fc.array(fc.constantFrom(cell("a"), cell("b", "x"), "Words.\n", "# Head\n"), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(blocks, fc.nat(), fc.boolean(), (parts, at, crlf) => {
        const ended = (of: string) => (crlf ? of.replaceAll("\n", "\r\n") : of);
        const before = ended(parts.join("\n"));
        const notebook = read(before);
        const place = at % (notebook.blocks.length + 1);
        const added = withBlockAdded(notebook, place, "cell", { name: "new", content: "1\n2" });
        const after = read(added);
        const index = after.blocks.findIndex((block) => "name" in block && block.name === "new");
        expect(after.blocks[index]?.text).toBe(ended(cell("new", "1\n2")));
        const cells = (of: string) =>
          read(of).blocks.flatMap((block) => ("name" in block ? [block.text] : []));
        expect(cells(added).filter((text) => !text.includes("new"))).toEqual(cells(before));
        const back = withBlockRemoved(after, index);
        // Put at the end, it leaves the blank line that parted it.
        expect(back === before || back === before + ended("\n")).toBe(true);
        if (index < after.blocks.length - 1) expect(back).toBe(before);
      }),
    );
  });
});
