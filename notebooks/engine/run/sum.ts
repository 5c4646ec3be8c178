import { sumPaths, sumText } from "../compile/index.ts";
import type { CellId, Host, Units } from "../types/index.ts";
import type { LiveCell } from "./cell.ts";
import { figureOf } from "./show/figure.ts";
import { isObject, property } from "./show/safe.ts";

/** A printed value longer than this would hide the sum. */
const longestFigure = 40;

/** The formula of a short sum with its names replaced by their printed values. */
export function sumOf(
  { cell }: LiveCell,
  cells: ReadonlyMap<CellId, LiveCell>,
  host: Host,
  units: Units,
): string | undefined {
  const paths = sumPaths(cell);
  if (paths === undefined) return undefined;
  const printed = new Map<string, string>();
  for (const path of paths) {
    const [name = "", ...members] = path.split(".");
    const used = cell.namesUsed.find((use) => use.name === name);
    const taken = used?.cell === undefined ? undefined : cells.get(used.cell);
    const base = taken === undefined ? host.names[name] : taken.value;
    const value = members.reduce<unknown>(
      (inner, member) => (isObject(inner) ? property(inner, member) : undefined),
      base,
    );
    const text = figureOf(value, host, units)?.text;
    if (text !== undefined && text.length <= longestFigure) printed.set(path, text);
  }
  return printed.size === 0 ? undefined : sumText(cell, printed);
}
