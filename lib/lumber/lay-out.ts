import type { PatternUse } from "../cutting/cut-part.ts";
import { filledU, fullSizes } from "../cutting/cut-part.ts";
import { isTight } from "../cutting/pattern-cost.ts";
import { laidInTwo } from "../cutting/two-parts.ts";
import type { BoardProblem } from "./board-problem.ts";
import { type LaidPiece, PieceDealer } from "./deal-pieces.ts";
import type { CuttingGroup } from "./make-groups.ts";

/** One board with the pieces that lie on it, each by its place in the problem. */
export interface LaidBoard {
  readonly kind: number;
  /** Class and entry of each piece, in the order of cutting. */
  readonly pieces: readonly LaidPiece[];
  /** Where the board is cut in two first: how many pieces lie on the first part, and its room. */
  readonly first: { readonly pieces: number; readonly roomU: number } | null;
}

interface Counted {
  readonly kind: number;
  readonly counts: number[];
}

/** Surplus pieces are left off: those of tight boards first, then those of kept ones. */
function leaveOffSurplus(group: CuttingGroup, boards: readonly Counted[]): void {
  const full = fullSizes(group.part);
  const overU = (board: Counted) =>
    filledU(board.counts, full) - (group.kinds[board.kind]?.capacityU ?? 0);
  const keptFirst = (board: Counted) => (group.kinds[board.kind]?.bought ? 1 : 0);
  for (const [place, { demand }] of group.classes.entries()) {
    let surplus = boards.reduce((sum, board) => sum + (board.counts[place] ?? 0), -demand);
    if (surplus <= 0) continue;
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

/** Where the board is cut in two: what of it lies on the first part. Full lengths where they fit. */
function firstPart(group: CuttingGroup, { kind, counts }: Counted) {
  const own = group.kinds[kind];
  if (!own || own.partsU === null) return null;
  return laidInTwo(group.part, own, counts) ?? null;
}

/**
 * Boards one by one from the patterns chosen. Boards on which pieces must be shortened get
 * theirs first and together, so that as few beds as possible are concerned.
 */
export function layOut(
  group: CuttingGroup,
  uses: readonly PatternUse[],
  pieces: BoardProblem["pieces"],
): LaidBoard[] {
  const boards: Counted[] = uses.flatMap(({ pattern, boards: n }) =>
    Array.from({ length: n }, () => ({ kind: pattern.kind, counts: pattern.counts.slice() })),
  );
  leaveOffSurplus(group, boards);
  const used = boards.filter((board) => board.counts.some((count) => count > 0));
  const key = (board: Counted) =>
    board.counts.map((count) => String(count).padStart(6, "0")).join();
  const tight = (board: Counted) => Number(isTight(group.part, board));
  const order = used.map((board) => ({ board, tight: tight(board), key: key(board) }));
  order.sort(
    (a, b) =>
      b.tight - a.tight ||
      Number(group.kinds[a.board.kind]?.bought) - Number(group.kinds[b.board.kind]?.bought) ||
      (group.kinds[b.board.kind]?.capacityU ?? 0) - (group.kinds[a.board.kind]?.capacityU ?? 0) ||
      (a.key < b.key ? 1 : a.key > b.key ? -1 : a.board.kind - b.board.kind),
  );
  return order.map(layer(group, pieces));
}

/** Lays pieces on boards as they come. */
function layer(group: CuttingGroup, pieces: BoardProblem["pieces"]) {
  const dealer = new PieceDealer(group, pieces);
  return ({ board }: { readonly board: Counted }): LaidBoard => {
    const two = firstPart(group, board);
    if (two === null) return { kind: board.kind, pieces: dealer.deal(board.counts), first: null };
    const first = dealer.deal(two.first);
    const others = dealer.deal(board.counts.map((count, i) => count - (two.first[i] ?? 0)));
    return {
      kind: board.kind,
      pieces: [...first, ...others],
      first: { pieces: first.length, roomU: two.firstU },
    };
  };
}

/** The runs of a laid board between its ends and the cut at the yard, each with its room. */
export function runsOf(
  group: CuttingGroup,
  board: LaidBoard,
): readonly { readonly pieces: readonly LaidPiece[]; readonly roomU: number }[] {
  const roomU = group.kinds[board.kind]?.capacityU ?? 0;
  const { first, pieces } = board;
  if (first === null) return [{ pieces, roomU }];
  return [
    { pieces: pieces.slice(0, first.pieces), roomU: first.roomU },
    { pieces: pieces.slice(first.pieces), roomU: roomU - first.roomU },
  ];
}
