/** A box, or where a long arrow passes a layer. */
export interface Stop {
  readonly height: number;
  readonly group: number;
  /** Place of the stops of the layer before that lead here, and of those of the next it leads to. */
  readonly before: number[];
  readonly after: number[];
}

/** How often the layers are gone through, there and back. */
const sweeps = 6;

/**
 * Orders the stops of each layer by the mean place of their neighbours, there and back a few times;
 * of all orders met, the one with the fewest crossings. Groups keep together, in their order.
 */
export function ordered(
  stops: readonly Stop[],
  layers: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  let order: readonly (readonly number[])[] = layers.map((layer) =>
    sorted(layer, stops, (at) => layer.indexOf(at)),
  );
  let best = order;
  let least = crossings(order, stops);
  for (let sweep = 0; sweep < sweeps && least > 0; sweep += 1) {
    order = swept(order, stops, sweep % 2 === 0 ? "before" : "after");
    const count = crossings(order, stops);
    if (count >= least) continue;
    least = count;
    best = order;
  }
  return best;
}

function swept(
  order: readonly (readonly number[])[],
  stops: readonly Stop[],
  side: "before" | "after",
): readonly (readonly number[])[] {
  const next = order.map((layer) => layer);
  const indices = next.map((_, at) => at);
  for (const at of side === "before" ? indices : indices.reverse()) {
    const fixed = next[side === "before" ? at - 1 : at + 1];
    const layer = next[at];
    if (!fixed || !layer) continue;
    const places = new Map(fixed.map((stop, place) => [stop, place]));
    const own = new Map(layer.map((stop, place) => [stop, place]));
    next[at] = sorted(layer, stops, (stop) => {
      const near = (stops[stop]?.[side] ?? []).map((one) => places.get(one) ?? 0);
      // What has no neighbour there stays where it is.
      if (near.length === 0) return own.get(stop) ?? 0;
      return near.reduce((sum, one) => sum + one, 0) / near.length;
    });
  }
  return next;
}

function sorted(
  layer: readonly number[],
  stops: readonly Stop[],
  place: (stop: number) => number,
): readonly number[] {
  const group = (stop: number) => stops[stop]?.group ?? 0;
  return layer
    .map((stop) => ({ stop, group: group(stop), place: place(stop) }))
    .sort((a, b) => a.group - b.group || a.place - b.place)
    .map(({ stop }) => stop);
}

/** How many lines between neighbouring layers cross each other. */
export function crossings(order: readonly (readonly number[])[], stops: readonly Stop[]): number {
  let count = 0;
  for (const [at, layer] of order.entries()) {
    const next = order[at + 1];
    if (!next) break;
    const places = new Map(next.map((stop, place) => [stop, place]));
    const ends = layer.flatMap((stop) =>
      (stops[stop]?.after ?? []).map((one) => places.get(one) ?? 0).sort((a, b) => a - b),
    );
    count += inversions(ends, next.length);
  }
  return count;
}

/** Pairs that stand the wrong way round, counted with a tree of partial sums. */
function inversions(ends: readonly number[], size: number): number {
  const sums = new Array<number>(size + 1).fill(0);
  let count = 0;
  for (const [seen, end] of ends.entries()) {
    let upTo = 0;
    for (let at = end + 1; at > 0; at -= at & -at) upTo += sums[at] ?? 0;
    count += seen - upTo;
    for (let at = end + 1; at <= size; at += at & -at) sums[at] = (sums[at] ?? 0) + 1;
  }
  return count;
}
