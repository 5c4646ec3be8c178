import type { CellId, OutlineCell } from "../types/index.ts";

type Cells = ReadonlyMap<CellId, OutlineCell>;

/** Every cell that a cell rests on, through whatever lies between, and itself. */
export function feeding(id: CellId, cells: Cells): ReadonlySet<CellId> {
  const found = new Set<CellId>();
  const waiting = [id];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    waiting.push(...(cells.get(next)?.takes ?? []));
  }
  return found;
}

/** Whether a cell rests on a function that takes long. */
export function needsLongWork(id: CellId, cells: Cells): boolean {
  return [...feeding(id, cells)].some((one) => cells.get(one)?.longWork === true);
}
