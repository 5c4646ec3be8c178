import type { CellBlock } from "../types/index.ts";
import { parseCell } from "./parse-cell.ts";
import { placerFor } from "./places.ts";
import type { NamePlace } from "./program.ts";
import { rewriteOperators } from "./rewrite.ts";

/** A formula with its operators rewritten, as a type checker has to see it. */
export interface Checkable {
  /** As many lines as the formula. */
  readonly text: string;
  /** From a line and column of `text`, both from 0, to the place in the document. */
  place(line: number, column: number): Pick<NamePlace, "line" | "column">;
}

/** Undefined where the formula can't be read. */
export function checkableText(block: CellBlock): Checkable | undefined {
  const parsed = parseCell(block.formula);
  if (!("program" in parsed)) return undefined;
  const { text } = rewriteOperators(block.formula, parsed);
  const { mappings } = text.generateDecodedMap({ hires: true });
  const place = placerFor(block);
  const lineStarts = [0];
  for (const match of block.formula.matchAll(/\n/g)) lineStarts.push(match.index + 1);
  return {
    text: text.toString(),
    place(line, column) {
      const segments = mappings[line] ?? [];
      // Text put in has no place of its own: it belongs to what follows it.
      const segment = segments.find(([at]) => at >= column) ?? segments.at(-1);
      const [, , fromLine = line, fromColumn = 0] = segment ?? [];
      return place({ start: (lineStarts[fromLine] ?? 0) + fromColumn });
    },
  };
}
