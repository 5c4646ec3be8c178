import type { CellError, CellId, Host, ShownProblem } from "../types/index.ts";
import type { LiveCell } from "./cell.ts";
import { problemsOf } from "./show/asides.ts";
import { isReading } from "./show/reading.ts";

/**
 * The tables that some reading found problems in, each with an error that lists them all. Which
 * table a reading is of is known by its name and by what the cell takes.
 */
export function refusedTables(
  cells: ReadonlyMap<CellId, LiveCell>,
  host: Host,
): ReadonlyMap<CellId, CellError> {
  const found = new Map<CellId, Map<string, ShownProblem>>();
  for (const live of cells.values()) {
    const readings = [live.value, ...live.readings].filter(isReading);
    for (const problem of problemsOf(readings, host)) {
      const table = tableOf(live, String(problem.path[0]), cells);
      if (table === undefined) continue;
      const list = found.get(table) ?? new Map<string, ShownProblem>();
      found.set(table, list.set(JSON.stringify(problem), problem));
    }
  }
  const refused = new Map<CellId, CellError>();
  for (const [id, problems] of found) {
    const table = cells.get(id)?.cell;
    if (table !== undefined) refused.set(id, refusal(table, [...problems.values()]));
  }
  return refused;
}

function refusal(
  { file, line, name }: { file: string; line: number; name: string },
  problems: readonly ShownProblem[],
): CellError {
  const message = problems.map(({ sentence }) => sentence).join("\n");
  return { kind: "problems", message, file, line, names: [name], problems };
}

/** The table of that name among all that a cell rests on. */
function tableOf(
  from: LiveCell,
  name: string,
  cells: ReadonlyMap<CellId, LiveCell>,
): CellId | undefined {
  const seen = new Set<CellId>();
  const waiting = [...from.cell.takes];
  for (let id = waiting.shift(); id !== undefined; id = waiting.shift()) {
    const live = cells.get(id);
    if (live === undefined || seen.has(id)) continue;
    seen.add(id);
    if (live.cell.what === "table" && live.cell.name === name) return id;
    waiting.push(...live.cell.takes);
  }
  return undefined;
}
