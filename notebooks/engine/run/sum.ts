import type { CellId, Host, Units } from "../types/index.ts";
import type { LiveCell } from "./cell.ts";
import { figureOf } from "./show/figure.ts";

/** A formula longer than this is not read as a sum. */
const longest = 240;
/** A printed value longer than this would hide the sum. */
const longestFigure = 40;

/**
 * The formula with the names of cells replaced by their printed values: `depth * area` is
 * "10 in * 24 sq ft". Only for expressions that name at least one figure.
 */
export function sumOf(
  { cell }: LiveCell,
  cells: ReadonlyMap<CellId, LiveCell>,
  host: Host,
  units: Units,
): string | undefined {
  if (!cell.expression || cell.formula.length > longest) return undefined;
  const edits = cell.namesUsed.flatMap(({ cell: id, places, name }) => {
    const live = id === undefined ? undefined : cells.get(id);
    if (live?.status !== "value") return [];
    const text = figureOf(live.value, host, units)?.text;
    if (text === undefined || text.length > longestFigure) return [];
    return places.map(({ start, shorthand }) => ({
      start,
      end: start + name.length,
      text: shorthand ? `${name}: ${text}` : text,
    }));
  });
  if (edits.length === 0) return undefined;
  return applied(cell.formula, edits).replace(/\s+/g, " ").trim();
}

function applied(
  formula: string,
  edits: readonly { readonly start: number; readonly end: number; readonly text: string }[],
): string {
  let text = formula;
  for (const edit of [...edits].sort((a, b) => b.start - a.start)) {
    text = text.slice(0, edit.start) + edit.text + text.slice(edit.end);
  }
  return text;
}
