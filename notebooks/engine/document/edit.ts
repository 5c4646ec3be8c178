import type { Block, CellBlock, Notebook, TableBlock } from "../types/index.ts";
import { isClosed, longerFence, openingOf } from "./fences.ts";
import { linesOf } from "./lines.ts";

/** The document with another formula in the named cell; every other byte stays. */
export function withFormula(notebook: Notebook, name: string, formula: string): string {
  return withContent(notebook, blockNamed(notebook, "cell", name), formula);
}

/** The document with other rows in the named table; every other byte stays. */
export function withTableText(notebook: Notebook, name: string, csv: string): string {
  return withContent(notebook, blockNamed(notebook, "table", name), csv);
}

function blockNamed(
  notebook: Notebook,
  kind: "cell" | "table",
  name: string,
): CellBlock | TableBlock {
  for (const block of notebook.blocks) {
    if (
      (block.kind === "cell" || block.kind === "table") &&
      block.kind === kind &&
      block.name === name
    ) {
      return block;
    }
  }
  throw new RangeError(`${notebook.file} has no ${kind} named ${name}`);
}

function withContent(notebook: Notebook, changed: Block, content: string): string {
  return notebook.blocks
    .map((block) => (block === changed ? refilled(block.text, content) : block.text))
    .join("");
}

/** The fenced block around new content, in its own line ends and indentation. */
function refilled(text: string, content: string): string {
  const lines = linesOf(text);
  const [opening] = lines;
  if (opening === undefined) return text;
  const { indent = "", marks = "```" } = openingOf(opening.text) ?? {};
  const lineEnd = opening.end === "" ? "\n" : opening.end;
  const body = linesOf(content.replace(/(\r\n|\n|\r)$/, ""));
  const fence = longerFence(
    marks,
    body.map((line) => line.text),
  );
  const head = opening.text.replace(marks, fence) + lineEnd;
  const filled = body
    .map((line) => (line.text === "" ? "" : indent + line.text) + lineEnd)
    .join("");
  const last = lines.at(-1);
  if (last === undefined || !isClosed(lines)) return `${head}${filled}${indent}${fence}${lineEnd}`;
  return head + filled + (fence === marks ? last.text : indent + fence) + last.end;
}
