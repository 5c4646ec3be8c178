import { type CutKind, type CutPart, restGrains } from "./cut-part.ts";

/** How a pattern lies on a board that is cut in two: what the first part holds, and the rests. */
export interface TwoParts {
  /** How many of each class lie on the first part. */
  readonly first: readonly number[];
  /** What the first part can hold, with one saw cut; the second has the rest of the capacity. */
  readonly firstU: number;
  readonly worth: number;
}

interface Filled {
  readonly usedU: number;
  readonly counts: readonly number[];
}

const mostFillings = 4000;

/** What some of a pattern's pieces can fill, each sum once. */
function fillings(counts: readonly number[], sizesU: readonly number[], mostU: number): Filled[] {
  let found = new Map<number, readonly number[]>([[0, counts.map(() => 0)]]);
  for (const [i, count] of counts.entries()) {
    const size = sizesU[i] ?? 0;
    const next = new Map(found);
    for (const [usedU, own] of found) {
      for (let n = 1; n <= count && usedU + n * size <= mostU; n++) {
        const sum = usedU + n * size;
        if (next.has(sum) || next.size >= mostFillings) continue;
        next.set(
          sum,
          own.map((value, at) => (at === i ? n : value)),
        );
      }
    }
    found = next;
  }
  return [...found].map(([usedU, own]) => ({ usedU, counts: own }));
}

/**
 * The best way to lay a pattern on the two parts of a board cut at the yard, or undefined where its
 * pieces cannot be parted so.
 */
export function inTwoParts(
  part: CutPart,
  kind: CutKind,
  { counts, sizesU }: { readonly counts: readonly number[]; readonly sizesU: readonly number[] },
): TwoParts | undefined {
  const { capacityU, partsU } = kind;
  if (partsU === null) return undefined;
  const [firstMost, secondMost] = partsU;
  const allU = counts.reduce((sum, count, i) => sum + count * (sizesU[i] ?? 0), 0);
  let best: TwoParts | undefined;
  for (const { usedU, counts: first } of fillings(counts, sizesU, firstMost)) {
    const otherU = allU - usedU;
    // The first part is as short as it may be, or as long as leaves the second what it needs.
    const shortest = Math.max(usedU, capacityU - secondMost);
    const longest = Math.min(firstMost, capacityU - otherU);
    if (shortest > longest) continue;
    for (const firstU of new Set([shortest, longest])) {
      const worth = kind.bought
        ? restGrains(part, firstU, usedU) + restGrains(part, capacityU - firstU, otherU)
        : 0;
      if (best === undefined || worth > best.worth) best = { first, firstU, worth };
    }
  }
  return best;
}
