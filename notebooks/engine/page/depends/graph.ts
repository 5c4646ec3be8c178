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
  /** All quiet cells too: else what they take goes straight to what takes them, where that is simpler. */
  readonly steps: boolean;
  /** Only this cell with all that feeds it and all that it feeds. */
  readonly only?: CellId;
}

/** The graph of an outline's cells, in the order of the outline. */
export function graphOf(
  outline: ReadonlyMap<CellId, OutlineCell>,
  { steps, only }: GraphOptions,
): Graph {
  const net = new Net(outline);
  if (!steps) net.fold((cell) => cell.hints.quiet && cell.id !== only);
  const all = net.edges();
  const kept = only === undefined ? net.cells : around(only, all);
  return {
    cells: [...outline.values()].filter(({ id }) => net.cells.has(id) && kept.has(id)),
    edges: all.filter(({ from, to }) => kept.has(from) && kept.has(to)),
  };
}

/** Cells with what each takes and gives to, from which cells can be taken out. */
class Net {
  readonly cells = new Set<CellId>();
  readonly #outline: ReadonlyMap<CellId, OutlineCell>;
  readonly #takes = new Map<CellId, Set<CellId>>();
  readonly #gives = new Map<CellId, Set<CellId>>();

  constructor(outline: ReadonlyMap<CellId, OutlineCell>) {
    this.#outline = outline;
    for (const { id, takes } of outline.values()) {
      this.cells.add(id);
      for (const from of takes) if (from !== id && outline.has(from)) this.#tie(from, id);
    }
  }

  edges(): readonly Edge[] {
    return [...this.#outline.keys()].flatMap((to) =>
      this.cells.has(to) ? [...(this.#takes.get(to) ?? [])].map((from) => ({ from, to })) : [],
    );
  }

  /**
   * Takes cells out where the picture is no fuller for it: a step that many cells take from many
   * others would leave a line from each to each.
   */
  fold(may: (cell: OutlineCell) => boolean): void {
    for (let isChanged = true; isChanged; ) {
      isChanged = false;
      for (const cell of this.#outline.values()) {
        if (!this.cells.has(cell.id) || !may(cell)) continue;
        const takes = this.#takes.get(cell.id)?.size ?? 0;
        const gives = this.#gives.get(cell.id)?.size ?? 0;
        if (takes * gives > takes + gives) continue;
        this.#takeOut(cell.id);
        isChanged = true;
      }
    }
  }

  #takeOut(id: CellId): void {
    const takes = this.#takes.get(id) ?? new Set();
    const gives = this.#gives.get(id) ?? new Set();
    for (const from of takes) this.#gives.get(from)?.delete(id);
    for (const to of gives) this.#takes.get(to)?.delete(id);
    for (const from of takes) for (const to of gives) if (from !== to) this.#tie(from, to);
    this.cells.delete(id);
  }

  #tie(from: CellId, to: CellId): void {
    const takes = this.#takes.get(to) ?? new Set();
    const gives = this.#gives.get(from) ?? new Set();
    this.#takes.set(to, takes.add(from));
    this.#gives.set(from, gives.add(to));
  }
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
