import type { CutPart, Pattern } from "./cut-part.ts";

/** The part with what these boards have taken care of left out. */
export function restOfPart(part: CutPart, fixed: readonly Pattern[]): CutPart {
  const made = part.classes.map(() => 0);
  const used = part.kinds.map(() => 0);
  for (const pattern of fixed) {
    used[pattern.kind] = (used[pattern.kind] ?? 0) + 1;
    for (const [i, count] of pattern.counts.entries()) made[i] = (made[i] ?? 0) + count;
  }
  return {
    ...part,
    classes: part.classes.map((each, i) => ({
      ...each,
      demand: Math.max(0, each.demand - (made[i] ?? 0)),
    })),
    kinds: part.kinds.map((kind, i) => ({
      ...kind,
      supply: kind.supply - (used[i] ?? 0),
      least: Math.max(0, kind.least - (used[i] ?? 0)),
    })),
  };
}

export const isDone = (part: CutPart): boolean => part.classes.every((each) => each.demand === 0);

/** A pattern without the pieces that are no longer needed; undefined where none is left. */
export function stillNeeded(part: CutPart, pattern: Pattern): Pattern | undefined {
  if ((part.kinds[pattern.kind]?.supply ?? 0) < 1) return undefined;
  const counts = pattern.counts.map((count, i) => Math.min(count, part.classes[i]?.demand ?? 0));
  return counts.some((count) => count > 0) ? { kind: pattern.kind, counts } : undefined;
}

/** The part without classes that need no more pieces, and the ways there and back for patterns. */
export function withoutDone(part: CutPart) {
  const places = part.classes.flatMap((each, i) => (each.demand > 0 ? [i] : []));
  const narrow = ({ kind, counts }: Pattern): Pattern => ({
    kind,
    counts: places.map((i) => counts[i] ?? 0),
  });
  const widen = ({ kind, counts }: Pattern): Pattern => {
    const all = part.classes.map(() => 0);
    for (const [at, i] of places.entries()) all[i] = counts[at] ?? 0;
    return { kind, counts: all };
  };
  const classes = places.flatMap((i) => part.classes[i] ?? []);
  return { part: { ...part, classes }, narrow, widen };
}
