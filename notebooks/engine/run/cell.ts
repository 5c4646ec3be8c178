import type { CompiledCell } from "../compile/program.ts";
import type { CellError, CellId, Entry } from "../types/index.ts";
import type { Run } from "./long-work.ts";

/** What a session knows of a cell as its values come and go. */
export interface LiveCell {
  readonly cell: CompiledCell;
  /** Cells that name it. */
  readonly gives: Set<CellId>;
  /** The key of the formula, and that of the value, in the graph; one and the same for a table. */
  readonly keys: { readonly formula: string; readonly value: string };
  /** What its formula gave when that is an entry. */
  entry: Entry | undefined;
  value: unknown;
  /** What went wrong in the cell itself; what it waits for is worked out when it is shown. */
  failure: unknown;
  status: "none" | "value" | "failed" | "waits";
  pending: Set<string>;
  run: Run | undefined;
  /** What was last reported, as JSON, so that nothing is sent twice. */
  sent: string;
  changed: boolean;
  error: CellError | undefined;
}

export function liveCell(cell: CompiledCell): LiveCell {
  return {
    cell,
    gives: new Set(),
    keys: { formula: `${cell.id} formula`, value: cell.id },
    entry: undefined,
    value: undefined,
    failure: undefined,
    status: "none",
    pending: new Set(),
    run: undefined,
    sent: "",
    changed: true,
    error: undefined,
  };
}

/** All cells that need one of these, directly or through others; themselves not counted. */
export function downstream(
  from: Iterable<CellId>,
  cells: ReadonlyMap<CellId, LiveCell>,
): ReadonlySet<CellId> {
  const found = new Set<CellId>();
  const waiting = [...from];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    for (const next of cells.get(id)?.gives ?? []) {
      if (found.has(next)) continue;
      found.add(next);
      waiting.push(next);
    }
  }
  return found;
}
