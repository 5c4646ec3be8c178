/** What is laid out: a box of a size, in a group that keeps together. */
export interface Box {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** Boxes of one group stand in one band; groups are numbered from the top. Default 0. */
  readonly group?: number;
}

export interface Arrow {
  readonly from: string;
  readonly to: string;
}

/** Neighbours of each box. */
export type Neighbours = ReadonlyMap<string, readonly string[]>;

/**
 * Takes the arrows out that would close a circle, so that all others can go forward: found by going
 * through the boxes in their order.
 */
export function withoutCircles(
  boxes: readonly Box[],
  arrows: readonly Arrow[],
): { readonly forward: readonly Arrow[]; readonly circling: readonly Arrow[] } {
  const out = groupBy(arrows, ({ from }) => from);
  const state = new Map<string, "open" | "done">();
  const circling = new Set<Arrow>();
  const visit = (id: string): void => {
    state.set(id, "open");
    for (const arrow of out.get(id) ?? []) {
      const there = state.get(arrow.to);
      if (there === "open") circling.add(arrow);
      else if (there === undefined) visit(arrow.to);
    }
    state.set(id, "done");
  };
  for (const { id } of boxes) if (!state.has(id)) visit(id);
  return { forward: arrows.filter((arrow) => !circling.has(arrow)), circling: [...circling] };
}

/**
 * The layer of each box: one after the last of what feeds it. What nothing feeds stands just before
 * the first that takes it, not far off at the beginning.
 */
export function layersOf(
  boxes: readonly Box[],
  forward: readonly Arrow[],
): ReadonlyMap<string, number> {
  const into = groupBy(forward, ({ to }) => to);
  const out = groupBy(forward, ({ from }) => from);
  const layers = new Map<string, number>();
  const layerOf = (id: string): number => {
    const known = layers.get(id);
    if (known !== undefined) return known;
    const before = (into.get(id) ?? []).map(({ from }) => layerOf(from) + 1);
    const layer = Math.max(0, ...before);
    layers.set(id, layer);
    return layer;
  };
  for (const { id } of boxes) layerOf(id);
  for (const { id } of boxes) {
    const after = (out.get(id) ?? []).map(({ to }) => layers.get(to) ?? 0);
    if (!into.has(id) && after.length > 0) layers.set(id, Math.min(...after) - 1);
  }
  return layers;
}

export function groupBy<T>(items: readonly T[], key: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}
