/** How far apart places must be, and within which bounds. */
export interface Apart {
  readonly apart: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Places moved as little as need be so that none is nearer to the next than `apart`, in the order
 * given; within the bounds as far as there is room.
 */
export function spreadOut(
  places: readonly number[],
  { apart, from, to }: Apart,
): readonly number[] {
  const order = places.map((_, at) => at).sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
  const moved = [...places];
  let least = from;
  for (const at of order) {
    moved[at] = Math.max(moved[at] ?? 0, least);
    least = (moved[at] ?? 0) + apart;
  }
  // What was pushed over the end comes back, and pushes what is before it.
  let most = Math.max(to, from + apart * (places.length - 1));
  for (const at of [...order].reverse()) {
    moved[at] = Math.min(moved[at] ?? 0, most);
    most = (moved[at] ?? 0) - apart;
  }
  return moved;
}
