import type { Session } from "../run/index.ts";
import type { CellError, CellId, CellState, OutlineCell } from "../types/index.ts";

/** One cell asked for, and how it came out. */
export interface Outcome {
  readonly cell: OutlineCell;
  readonly state: CellState | undefined;
  /** Undefined where it has an error. */
  readonly value: unknown;
  /** Its own error, or those of the cells it waits for. */
  readonly errors: readonly CellFailure[];
}

/** An error and the cell it belongs to. */
export interface CellFailure {
  readonly name: string;
  readonly error: CellError;
}

/** How a cell came out; one that waits for others has their errors. */
export function outcomeOf(
  cell: OutlineCell,
  session: Session,
  unfinished: ReadonlySet<CellId>,
): Outcome {
  const state = session.state(cell.id);
  const errors = unfinished.has(cell.id) ? [neverEnds(cell)] : errorsOf(cell, state, session);
  return { cell, state, value: errors.length === 0 ? session.value(cell.id) : undefined, errors };
}

function errorsOf(
  cell: OutlineCell,
  state: CellState | undefined,
  session: Session,
): readonly CellFailure[] {
  if (state?.error === undefined) return [];
  const own = { name: cell.name, error: state.error };
  if (state.error.kind !== "waits") return [own];
  const byId = new Map(session.outline.map((one) => [one.id, one]));
  const found = new Map<CellId, CellFailure>();
  const seen = new Set<CellId>();
  const waiting = [...cell.takes];
  for (let id = waiting.shift(); id !== undefined; id = waiting.shift()) {
    if (seen.has(id)) continue;
    seen.add(id);
    const error = session.state(id)?.error;
    const taken = byId.get(id);
    if (taken === undefined || error === undefined) continue;
    if (error.kind === "waits") waiting.push(...taken.takes);
    else found.set(id, { name: taken.name, error });
  }
  return found.size === 0 ? [own] : [...found.values()];
}

function neverEnds({ name, file, line }: OutlineCell): CellFailure {
  const error: CellError = {
    kind: "stopped",
    message: `${name} never came to an end: something it waits for does not come.`,
    file,
    line,
    names: [name],
    problems: [],
  };
  return { name, error };
}
