import type { CompiledCell, Program } from "../compile/index.ts";
import type { CellId, Entry } from "../types/index.ts";
import { isEntry } from "./entries.ts";
import type { Run } from "./long-work.ts";

/** What a session knows of a cell as its values come and go. */
export interface LiveCell {
  /** As it was compiled last: an edit elsewhere may move it in the document. */
  cell: CompiledCell;
  /** Cells that name it. */
  readonly gives: Set<CellId>;
  /** The key of the formula, and that of the value, in the graph; one and the same for a table. */
  readonly keys: { readonly formula: string; readonly value: string };
  /** What its formula gave when that is an entry. */
  entry: Entry | undefined;
  value: unknown;
  /** The readings of tables its formula made on the way to the value, whatever became of them. */
  readings: readonly object[];
  /** What went wrong in the cell itself; what it waits for is worked out when it is shown. */
  failure: unknown;
  status: "none" | "value" | "failed" | "waits";
  pending: Set<string>;
  run: Run | undefined;
  /** What was last reported, as JSON, so that nothing is sent twice. */
  sent: string;
  changed: boolean;
  /** What was last reported as left out. */
  leftOut: string | undefined;
  /** Its formula was asked for and had the same inputs as before, so that nothing of it is new. */
  reused: boolean;
}

/**
 * The program's cells, alive, in its order. Cells that were alive before stay the very same, with
 * all that is known of them.
 */
export function liveCells(
  { cells }: Program,
  before: ReadonlyMap<CellId, LiveCell> = new Map(),
): Map<CellId, LiveCell> {
  const live = new Map(cells.map((cell) => [cell.id, before.get(cell.id) ?? liveCell(cell)]));
  for (const { gives } of live.values()) gives.clear();
  for (const cell of cells) for (const taken of cell.takes) live.get(taken)?.gives.add(cell.id);
  return live;
}

/** Whether two compilings of a cell run the same: where it stands in the document does not count. */
export function runsTheSame(one: CompiledCell, other: CompiledCell): boolean {
  return runningPart(one) === runningPart(other);
}

function runningPart(cell: CompiledCell): string {
  const { what, problem, body, expression, async, generator, inputs, csv } = cell;
  if (problem !== undefined) return what;
  return JSON.stringify([what, body, expression, async, generator, inputs, csv]);
}

function liveCell(cell: CompiledCell): LiveCell {
  return {
    cell,
    gives: new Set(),
    keys: { formula: `${cell.id} formula`, value: cell.id },
    entry: undefined,
    value: undefined,
    readings: [],
    failure: undefined,
    status: "none",
    pending: new Set(),
    run: undefined,
    sent: "",
    changed: true,
    leftOut: undefined,
    reused: false,
  };
}

/**
 * Which of two cells' long work goes first: what an answer that stays in sight rests on before all
 * else, then as they stand in the program. The lower goes first.
 */
export function orderOf(id: CellId, cells: ReadonlyMap<CellId, LiveCell>): number {
  const place = [...cells.keys()].indexOf(id);
  const concerned = [id, ...downstream([id], cells)];
  const inSight = concerned.some((each) => cells.get(each)?.cell.hints.pinned);
  return inSight ? place : cells.size + place;
}

/** Takes in what a key of the cell gave. */
export function tookValue(live: LiveCell, key: string, value: unknown): void {
  if (key === live.keys.formula) live.entry = isEntry(value) ? value : undefined;
  if (key !== live.keys.value) return;
  live.status = "value";
  live.value = value;
  live.failure = undefined;
}

/** Takes in that a key of the cell failed, `input` naming the key it needed, where that was why. */
export function failed(
  live: LiveCell,
  key: string,
  error: unknown,
  input: string | undefined,
): void {
  if (key === live.keys.formula) {
    live.entry = undefined;
    // It was not run at all, so what an earlier run read counts no more.
    if (input !== undefined) live.readings = [];
  }
  // That the value fails for want of its formula says nothing new.
  if (input === live.keys.formula) return;
  live.status = input === undefined ? "failed" : "waits";
  live.failure = error;
  live.value = undefined;
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
