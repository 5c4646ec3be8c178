import { withFormula } from "../../document/seldom.ts";
import type { Block, CellId, Notebook } from "../../types/index.ts";
import { idOf, partsOf } from "../book.ts";

/** Where a cell's block stands in its document; a name given twice has `/2` at its second place. */
export function placeOf(
  id: CellId,
  documents: ReadonlyMap<string, Notebook>,
): { readonly notebook: Notebook; readonly index: number; readonly block: Block } | undefined {
  const [file, whole] = partsOf(id);
  const notebook = documents.get(file);
  if (!notebook) return undefined;
  const [name = "", count = "1"] = whole.split("/");
  const found = notebook.blocks.flatMap((block, index) =>
    (block.kind === "cell" || block.kind === "table") && block.name === name ? [index] : [],
  );
  const index = found[Number(count) - 1];
  const block = index === undefined ? undefined : notebook.blocks[index];
  return index === undefined || !block ? undefined : { notebook, index, block };
}

/** The cell that stands at a place of a document. */
export function idAt({ file, blocks }: Notebook, index: number): CellId | undefined {
  const block = blocks[index];
  if (block?.kind !== "cell" && block?.kind !== "table") return undefined;
  const before = blocks
    .slice(0, index)
    .filter((one) => (one.kind === "cell" || one.kind === "table") && one.name === block.name);
  const name = before.length === 0 ? block.name : `${block.name}/${before.length + 1}`;
  return idOf(file, name);
}

/** The document with another formula in the cell at this place. */
export function withFormulaAt(notebook: Notebook, index: number, formula: string): string {
  return notebook.blocks
    .map((block, at) =>
      at === index && block.kind === "cell"
        ? withFormula({ ...notebook, blocks: [block] }, block.name, formula)
        : block.text,
    )
    .join("");
}

/**
 * Where a block goes when it is moved up (-1) or down (1): past the next block that says something,
 * blank lines between do not count. Undefined at the end of the document.
 */
export function placeBeside({ blocks }: Notebook, index: number, by: -1 | 1): number | undefined {
  let to = index + by;
  while (isBlank(blocks[to])) to += by;
  return blocks[to] ? to : undefined;
}

/** Whether a block is nothing but blank lines, as between two cells. */
export function isBlank(block: Block | undefined): boolean {
  return block?.kind === "prose" && block.text.trim() === "";
}
