import {
  type CutKind,
  type CutPart,
  filledU,
  fullSizes,
  leastSizes,
  restGrains,
} from "./cut-part.ts";

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
 * Where the board may best be cut: the first part as short as it may be, or as long as leaves the
 * second what it needs; or so that one of the rests is just worth keeping.
 */
function places(
  { rests, kerfU }: CutPart,
  at: {
    readonly shortest: number;
    readonly longest: number;
    readonly usedU: number;
    /** Where the second part begins to be filled up. */
    readonly secondU: number;
  },
): ReadonlySet<number> {
  const found = new Set([at.shortest, at.longest]);
  if (rests === null) return found;
  const keptU = kerfU + rests.fromU;
  for (const placeU of [at.usedU + keptU, at.secondU - keptU]) {
    if (placeU > at.shortest && placeU < at.longest) found.add(placeU);
  }
  return found;
}

/** A pattern's pieces: the sizes that must fit, and those that rests are measured by. */
interface Sized {
  readonly counts: readonly number[];
  readonly sizesU: readonly number[];
  readonly restsOf: readonly number[];
}

function bestLay(part: CutPart, kind: CutKind, sized: Sized): TwoParts | undefined {
  const { capacityU, partsU } = kind;
  if (partsU === null) return undefined;
  const { counts, sizesU, restsOf } = sized;
  const [firstMost, secondMost] = partsU;
  const [allU, allRestsU] = [filledU(counts, sizesU), filledU(counts, restsOf)];
  let best: TwoParts | undefined;
  for (const { usedU, counts: first } of fillings(counts, sizesU, firstMost)) {
    const shortest = Math.max(usedU, capacityU - secondMost);
    const longest = Math.min(firstMost, capacityU - (allU - usedU));
    if (shortest > longest) continue;
    const firstRestsU = filledU(first, restsOf);
    const otherU = allRestsU - firstRestsU;
    const at = { shortest, longest, usedU: firstRestsU, secondU: capacityU - otherU };
    for (const firstU of places(part, at)) {
      const worth = kind.bought
        ? restGrains(part, firstU, firstRestsU) + restGrains(part, capacityU - firstU, otherU)
        : 0;
      if (best === undefined || worth > best.worth) best = { first, firstU, worth };
    }
  }
  return best;
}

/**
 * The best way to lay a pattern on the two parts of a board cut at the yard, or undefined where its
 * pieces cannot be parted so. Rests are those that pieces of full length leave.
 */
export function inTwoParts(
  part: CutPart,
  kind: CutKind,
  { counts, sizesU }: { readonly counts: readonly number[]; readonly sizesU: readonly number[] },
): TwoParts | undefined {
  return bestLay(part, kind, { counts, sizesU, restsOf: fullSizes(part) });
}

/** The same with pieces of full length where they fit, else as short as allowed. */
export function laidInTwo(
  part: CutPart,
  kind: CutKind,
  counts: readonly number[],
): TwoParts | undefined {
  const full = inTwoParts(part, kind, { counts, sizesU: fullSizes(part) });
  return full ?? inTwoParts(part, kind, { counts, sizesU: leastSizes(part) });
}
