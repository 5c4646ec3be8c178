import {
  type BoardKind,
  type CuttingGroup,
  demands,
  filledU,
  fullSizes,
  leastSizes,
  type Pattern,
} from "./cutting-group.ts";

interface Filling {
  readonly sizesU: readonly number[];
  readonly most: readonly number[];
  readonly capacityU: number;
  /** Only fillings worth this much are wanted, by what each piece is worth. */
  readonly worth?: { readonly values: readonly number[]; readonly atLeast: number };
}

/**
 * What pieces and limited boards are worth when no board without limit holds more than its price.
 * A plan then costs `floor` and, over that, for each of its boards at least the price (and the worth
 * of a limited board) less the worth of its pieces.
 */
export interface PieceWorth {
  readonly values: readonly number[];
  /** One for each kind of board, 0 where there is no limit. */
  readonly boards: readonly number[];
  readonly floor: number;
}

/**
 * All ways to fill a board to which no further piece can be added. Gives undefined when more than
 * `limit` of them, or two hundred times as many steps would be needed.
 */
export function maximalFillings(filling: Filling, limit: number): number[][] | undefined {
  const { sizesU, most, capacityU } = filling;
  const found: number[][] = [];
  const counts = sizesU.map(() => 0);
  // All that the classes after this one can take up: where that leaves room for one more of this
  // class, nothing below can be full.
  const restTakes = sizesU.map(() => 0);
  for (let i = sizesU.length - 2; i >= 0; i--) {
    restTakes[i] = (restTakes[i + 1] ?? 0) + (sizesU[i + 1] ?? 0) * (most[i + 1] ?? 0);
  }
  // The most that each length left can still be worth, class by class.
  const densest = sizesU.map(() => 0);
  const { values = [], atLeast = 0 } = filling.worth ?? {};
  for (let i = sizesU.length - 1; i >= 0; i--) {
    densest[i] = Math.max(densest[i + 1] ?? 0, (values[i] ?? 0) / (sizesU[i] ?? 1));
  }
  let attempts = 0;
  const isFull = (restU: number) =>
    sizesU.every((size, i) => size > restU || (counts[i] ?? 0) >= (most[i] ?? 0));
  const visit = (i: number, restU: number, worth: number): boolean => {
    attempts++;
    if (attempts > 200 * limit) return false;
    if (worth + restU * (densest[i] ?? 0) < atLeast) return true;
    if (i === sizesU.length) {
      if (isFull(restU)) found.push(counts.slice());
      return found.length <= limit;
    }
    const size = sizesU[i] ?? 0;
    const highest = Math.min(most[i] ?? 0, Math.floor(restU / size));
    const last = i === sizesU.length - 1;
    for (let n = highest; n >= (last ? highest : 0); n--) {
      const left = restU - n * size;
      if (n < (most[i] ?? 0) && left - (restTakes[i] ?? 0) >= size) break;
      counts[i] = n;
      if (!visit(i + 1, left, worth + n * (values[i] ?? 0))) return false;
    }
    counts[i] = 0;
    return true;
  };
  return visit(0, capacityU, 0) ? found : undefined;
}

/** The longest board without limit that costs no more than this one, and is not this one. */
function cheaperCapacity(kinds: readonly BoardKind[], kind: BoardKind): number {
  const cheaper = kinds.filter(
    (other) =>
      other !== kind &&
      other.supply === Number.POSITIVE_INFINITY &&
      other.cost <= kind.cost &&
      other.capacityU < kind.capacityU,
  );
  return Math.max(-1, ...cheaper.map((other) => other.capacityU));
}

/**
 * All patterns of a group that a cheapest plan may need: for every kind of board, those full with
 * the pieces at their full lengths, and those that are full, and fit at all, only with pieces
 * shortened. A pattern that a cheaper board without limit holds as well is left out. Whatever lies
 * on a board of any plan is part of one of these at no higher cost, so the best choice among them
 * is the best of all. Gives undefined when there are more than `limit`.
 *
 * With `near`, only patterns that a plan costing no more than `costAtMost` can use: those that lose no
 * more than what lies between that and the floor.
 */
export function listPatterns(
  group: CuttingGroup,
  limit: number,
  near?: { readonly worth: PieceWorth; readonly costAtMost: number },
): Pattern[] | undefined {
  const full = fullSizes(group);
  const least = leastSizes(group);
  const most = demands(group);
  const shortens = full.some((size, i) => size !== least[i]);
  const patterns: Pattern[] = [];
  for (const [kind, board] of group.kinds.entries()) {
    const { capacityU } = board;
    const worth = near && {
      values: near.worth.values,
      atLeast:
        board.cost + (near.worth.boards[kind] ?? 0) - (near.costAtMost - near.worth.floor) - 1e-4,
    };
    const cheaperU = cheaperCapacity(group.kinds, board);
    const loose = maximalFillings(
      { sizesU: full, most, capacityU, ...(worth && { worth }) },
      limit,
    );
    const short = shortens
      ? maximalFillings({ sizesU: least, most, capacityU, ...(worth && { worth }) }, limit)
      : [];
    if (!loose || !short) return undefined;
    for (const counts of loose) {
      const used = filledU(counts, full);
      if (used > 0 && used > cheaperU) patterns.push({ kind, counts, tight: false });
    }
    for (const counts of short) {
      const tight = filledU(counts, full) > capacityU;
      if (tight && filledU(counts, least) > cheaperU) patterns.push({ kind, counts, tight });
    }
    if (patterns.length > limit) return undefined;
  }
  return patterns;
}
