import type { CuttingGroup, PatternUse } from "./cutting-group.ts";
import { demands, filledU, fullSizes } from "./cutting-group.ts";

/** One board with the pieces that lie on it, each by its place in the problem. */
export interface LaidBoard {
  kind: number;
  /** Class and entry of each piece, in the order of cutting. */
  readonly pieces: readonly { readonly place: number; readonly entry: number }[];
}

interface Counted {
  kind: number;
  readonly counts: number[];
}

/** Boards in the order in which surplus pieces are left off: tight ones first, then kept ones. */
function leaveOffSurplus(group: CuttingGroup, boards: readonly Counted[]): void {
  const full = fullSizes(group);
  const overU = (board: Counted) =>
    filledU(board.counts, full) - (group.kinds[board.kind]?.capacityU ?? 0);
  const keptFirst = (board: Counted) => (group.kinds[board.kind]?.kept ? 0 : 1);
  for (const [place, demand] of demands(group).entries()) {
    let surplus = boards.reduce((sum, board) => sum + (board.counts[place] ?? 0), -demand);
    const order = [...boards].sort((a, b) => overU(b) - overU(a) || keptFirst(a) - keptFirst(b));
    for (const pass of ["tight", "any"] as const) {
      for (const board of order) {
        while (
          surplus > 0 &&
          (board.counts[place] ?? 0) > 0 &&
          (pass === "any" || overU(board) > 0)
        ) {
          board.counts[place] = (board.counts[place] ?? 0) - 1;
          surplus--;
        }
      }
    }
  }
}

/** Each bought board changed to the cheapest without limit that holds its pieces as well. */
function takeCheaper(group: CuttingGroup, boards: readonly Counted[]): void {
  const full = fullSizes(group);
  for (const board of boards) {
    const used = filledU(board.counts, full);
    for (const [i, kind] of group.kinds.entries()) {
      const now = group.kinds[board.kind];
      if (!now || kind.kept || kind.supply !== Number.POSITIVE_INFINITY) continue;
      if (kind.capacityU >= used && kind.cost < now.cost) board.kind = i;
    }
  }
}

/**
 * Boards one by one from the patterns chosen. Pieces of one length may change places, so they are
 * dealt out in the order of the beds; boards on which pieces must be shortened get theirs first and
 * together, so that as few beds as possible are concerned.
 */
export function layOut(
  group: CuttingGroup,
  uses: readonly PatternUse[],
  counts: readonly number[],
): LaidBoard[] {
  const boards: Counted[] = uses.flatMap(({ pattern, boards: n }) =>
    Array.from({ length: n }, () => ({ kind: pattern.kind, counts: pattern.counts.slice() })),
  );
  leaveOffSurplus(group, boards);
  const used = boards.filter((board) => board.counts.some((count) => count > 0));
  takeCheaper(group, used);
  const full = fullSizes(group);
  const isTight = ({ kind, counts: own }: Counted) =>
    filledU(own, full) > (group.kinds[kind]?.capacityU ?? 0);
  const key = (board: Counted) =>
    board.counts.map((count) => String(count).padStart(6, "0")).join();
  used.sort(
    (a, b) =>
      Number(isTight(b)) - Number(isTight(a)) ||
      Number(group.kinds[b.kind]?.kept) - Number(group.kinds[a.kind]?.kept) ||
      (group.kinds[b.kind]?.lengthU ?? 0) - (group.kinds[a.kind]?.lengthU ?? 0) ||
      (key(a) < key(b) ? 1 : key(a) > key(b) ? -1 : a.kind - b.kind),
  );
  // Square pieces before mitred ones, longest first: the rest of the board stays long and square.
  const order = group.classes
    .map((each, place) => ({ each, place }))
    .sort((a, b) => Number(a.each.mitred) - Number(b.each.mitred) || a.place - b.place);
  const queues = group.classes.map(({ entries }) =>
    entries.flatMap((entry) => Array.from({ length: counts[entry] ?? 0 }, () => entry)),
  );
  const next = queues.map(() => 0);
  return used.map((board) => ({
    kind: board.kind,
    pieces: order.flatMap(({ place }) =>
      Array.from({ length: board.counts[place] ?? 0 }, () => {
        const entry = queues[place]?.[next[place] ?? 0] ?? 0;
        next[place] = (next[place] ?? 0) + 1;
        return { place, entry };
      }),
    ),
  }));
}
