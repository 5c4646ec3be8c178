import { linesOf } from "../document/index.ts";
import type { NamePlace } from "./program.ts";
import type { Made } from "./scope.ts";

/** From an offset in a formula to its line and column in the document. */
export type Placer = (at: { readonly start: number; readonly shorthand?: boolean }) => NamePlace;

export function placerFor(block: Made): Placer {
  const content = block.kind === "cell" ? block.formula : block.csv;
  const first = block.kind === "cell" ? block.formulaLine : block.csvLine;
  const raw = linesOf(block.text).slice(1);
  const starts = [0];
  for (const match of content.matchAll(/\n/g)) starts.push(match.index + 1);
  const texts = content.split("\n");
  return ({ start, shorthand = false }) => {
    let index = starts.findLastIndex((from) => from <= start);
    if (index < 0) index = 0;
    // An indented fence has that much taken off each of its lines.
    const shift = (raw[index]?.text.length ?? 0) - (texts[index]?.length ?? 0);
    const column = start - (starts[index] ?? 0) + Math.max(shift, 0) + 1;
    return { start, line: first + index, column, shorthand };
  };
}
