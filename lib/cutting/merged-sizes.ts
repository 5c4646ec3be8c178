import type { CutClass, CutPart, Pattern, PatternUse } from "./cut-part.ts";
import { gathered } from "./pattern-cost.ts";

/** A part with classes of nearly one length taken together. */
export interface Merged {
  readonly part: CutPart;
  /** For each class of the part as it was, the class it went into. */
  readonly into: readonly number[];
}

/** Past so many different lengths, neighbours are taken together. */
export const classesAtMost = 250;

const steps = 3000;

/**
 * So many classes at most, neighbours in length taken together: no longer than the shortest of
 * them, which gives a floor, or no shorter than the longest, which gives plans.
 */
export function mergedSizes(part: CutPart, most: number, as: "shortest" | "longest"): Merged {
  const { classes } = part;
  const each = Math.ceil(classes.length / most);
  // Lengths without a common measure would make the tables long.
  const stepU = Math.ceil(Math.max(0, ...part.kinds.map((kind) => kind.capacityU)) / steps);
  const round = as === "longest" ? Math.ceil : Math.floor;
  const even = (sizeU: number) => Math.max(stepU, round(sizeU / stepU) * stepU);
  const merged: CutClass[] = [];
  for (let from = 0; from < classes.length; from += each) {
    const own = classes.slice(from, from + each);
    // Classes come longest first.
    const size = (as === "longest" ? own[0] : own[own.length - 1]) as CutClass;
    const demand = own.reduce((sum, one) => sum + one.demand, 0);
    merged.push({ leastU: even(size.leastU), fullU: even(size.fullU), demand });
  }
  return { part: { ...part, classes: merged }, into: classes.map((_, i) => Math.floor(i / each)) };
}

/** A plan of merged classes as one of the classes as they were: any piece goes where one as long or longer was. */
export function unmerged(
  part: CutPart,
  { into }: Merged,
  uses: readonly PatternUse[],
): readonly PatternUse[] {
  const left = part.classes.map((each) => each.demand);
  const next = new Map<number, number>();
  for (const [i, at] of into.entries()) if (!next.has(at)) next.set(at, i);
  const patterns: Pattern[] = [];
  for (const { pattern, boards } of uses) {
    for (let n = 0; n < boards; n++) {
      const counts = part.classes.map(() => 0);
      for (const [at, count] of pattern.counts.entries()) {
        for (let c = 0; c < count; c++) takeOne(at, counts);
      }
      if (counts.some((count) => count > 0)) patterns.push({ kind: pattern.kind, counts });
    }
  }
  return gathered(patterns);

  function takeOne(at: number, counts: number[]): void {
    let i = next.get(at) ?? -1;
    while (into[i] === at && (left[i] ?? 0) === 0) i++;
    next.set(at, i);
    if (into[i] !== at) return;
    left[i] = (left[i] ?? 0) - 1;
    counts[i] = (counts[i] ?? 0) + 1;
  }
}
