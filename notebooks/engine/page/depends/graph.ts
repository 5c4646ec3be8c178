import type { CellId, OutlineCell } from "../../types/index.ts";

/** Which cells a picture shows, and which of them feeds which. */
export interface Graph {
  readonly cells: readonly OutlineCell[];
  readonly edges: readonly Edge[];
}

/** What one cell hands another. */
export interface Edge {
  readonly from: CellId;
  readonly to: CellId;
}

export interface GraphOptions {
  /** Quiet cells too: else what they take goes straight to what takes them. */
  readonly steps: boolean;
  /** Only this cell with all that feeds it and all that it feeds. */
  readonly only?: CellId;
}

/** The graph of an outline's cells, in the order of the outline. */
export function graphOf(
  outline: ReadonlyMap<CellId, OutlineCell>,
  { steps, only }: GraphOptions,
): Graph {
  const isShown = ({ id, hints }: OutlineCell) => steps || !hints.quiet || id === only;
  const takes = new Map<CellId, readonly CellId[]>();
  for (const cell of outline.values())
    if (isShown(cell)) takes.set(cell.id, shownTakes(cell, outline, isShown));
  const all = [...takes].flatMap(([to, from]) => from.map((one) => ({ from: one, to })));
  const kept = only === undefined ? new Set(takes.keys()) : around(only, all);
  return {
    cells: [...outline.values()].filter(({ id }) => takes.has(id) && kept.has(id)),
    edges: all.filter(({ from, to }) => kept.has(from) && kept.has(to)),
  };
}

/** What a cell takes, past the cells that are not shown. */
function shownTakes(
  cell: OutlineCell,
  outline: ReadonlyMap<CellId, OutlineCell>,
  isShown: (cell: OutlineCell) => boolean,
): readonly CellId[] {
  const found = new Set<CellId>();
  const seen = new Set<CellId>([cell.id]);
  const visit = (ids: readonly CellId[]): void => {
    for (const id of ids) {
      const taken = outline.get(id);
      if (!taken || seen.has(id)) continue;
      seen.add(id);
      if (isShown(taken)) found.add(id);
      else visit(taken.takes);
    }
  };
  visit(cell.takes);
  return [...found];
}

/** A cell with all that feeds it and all that it feeds, near and far. */
export function around(id: CellId, edges: readonly Edge[]): ReadonlySet<CellId> {
  return new Set([id, ...reached(id, edges, "from"), ...reached(id, edges, "to")]);
}

/** All cells that feed one (`from`), or that it feeds (`to`), near and far. */
export function reached(
  id: CellId,
  edges: readonly Edge[],
  which: "from" | "to",
): ReadonlySet<CellId> {
  const near = new Map<CellId, CellId[]>();
  for (const { from, to } of edges) {
    const [here, there] = which === "from" ? [to, from] : [from, to];
    near.set(here, [...(near.get(here) ?? []), there]);
  }
  const found = new Set<CellId>();
  const waiting = [...(near.get(id) ?? [])];
  for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
    if (found.has(one) || one === id) continue;
    found.add(one);
    waiting.push(...(near.get(one) ?? []));
  }
  return found;
}
