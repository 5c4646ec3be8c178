import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readNotebook, writeNotebook } from "../../../notebooks/engine/document/index.ts";
import { withFormula, withTableText } from "../../../notebooks/engine/document/seldom.ts";

const folder = join(import.meta.dirname, "golden");
const documents = readdirSync(folder)
  .filter((file) => file.endsWith(".md"))
  .map((file) => [file, readFileSync(join(folder, file), "utf8")] as const);

describe("a changed formula or table leaves every other byte", () => {
  test.each(documents)("%s", (file, text) => {
    const notebook = readNotebook(text, file);
    notebook.blocks.forEach((block, index) => {
      if (block.kind !== "cell" && block.kind !== "table") return;
      const first = notebook.blocks.findIndex(
        (other) => other.kind === block.kind && other.name === block.name,
      );
      if (first !== index) return;
      const content = "new + 1\n  ```\n\n~~~~\n  end";
      const edited =
        block.kind === "cell"
          ? withFormula(notebook, block.name, content)
          : withTableText(notebook, block.name, content);
      const before = notebook.blocks.slice(0, index).map((other) => other.text);
      const after = notebook.blocks.slice(index + 1).map((other) => other.text);
      expect(edited.startsWith(before.join(""))).toBe(true);
      expect(edited.endsWith(after.join(""))).toBe(true);
      const again = readNotebook(edited, file).blocks;
      expect(again.map((other) => other.text).slice(0, index)).toEqual(before);
      expect(again.map((other) => other.text).slice(index + 1)).toEqual(after);
      const changed = again[index];
      expect(changed).toMatchObject({ kind: block.kind, name: block.name, hints: block.hints });
      expect(
        changed?.kind === "cell" ? changed.formula : changed?.kind === "table" && changed.csv,
      ).toBe(content);
    });
  });
});

test("writing the formula that is there changes nothing, line ends and indentation included", () => {
  for (const text of [
    "a\r\n```js cell a\r\n1 +\r\n\r\n 2\r\n```\r\nb",
    "  ~~~~ js cell a pinned\n  1\n\n    2\n  ~~~~  \n",
    "\uFEFF```js cell a\n1\n```",
  ]) {
    const notebook = readNotebook(text, "n.md");
    const [cell] = notebook.blocks.filter((block) => block.kind === "cell");
    expect(withFormula(notebook, "a", cell?.formula ?? "")).toBe(text);
  }
});

test("a line that only looks like a closing fence does not pass for one", () => {
  // A line separator is no blank: the fence is still open at the end of the document.
  const text = "~~~js cell a\n1\n\u2028~~~\n";
  expect(readNotebook(text, "n.md").problems.map(({ code }) => code)).toEqual(["unclosed-fence"]);
  const edited = withFormula(readNotebook(text, "n.md"), "a", "2");
  const [cell] = readNotebook(edited, "n.md").blocks;
  expect(cell).toMatchObject({ kind: "cell", formula: "2" });
});

test("an unclosed fence is closed by a change", () => {
  expect(withFormula(readNotebook("```js cell a\n1", "n.md"), "a", "2")).toBe(
    "```js cell a\n2\n```\n",
  );
});

test("a name that is not there is refused by name", () => {
  const notebook = readNotebook("```js cell a\n1\n```\n", "n.md");
  expect(() => withFormula(notebook, "b", "1")).toThrow("n.md has no cell named b");
  expect(() => withTableText(notebook, "a", "1")).toThrow("n.md has no table named a");
});

const piece = fc.constantFrom(
  ..."```|~~~|````|js cell a|js cell b pinned|csv table t|uses g.md|\n|\n|\r\n|\r| |    |\t|> |- |1. |`fig a`|x|<pre>|-->|\uFEFF|===|# ".split(
    "|",
  ),
);

test("any text comes back byte for byte, and its lines are where the blocks say", () => {
  const texts = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(""));
  fc.assert(
    fc.property(fc.oneof(texts, fc.string({ unit: "binary" })), (text) => {
      const notebook = readNotebook(text, "n.md");
      expect(writeNotebook(notebook)).toBe(text);
      let line = 1;
      for (const block of notebook.blocks) {
        expect(block.line).toBe(line);
        line += block.text.match(/\r\n|\n|\r/g)?.length ?? 0;
      }
    }),
    { numRuns: 3000 },
  );
});
