import type { CutBoard, CutPiece } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { LaidBoard } from "./lay-out.ts";
import type { PricedGroup } from "./make-groups.ts";
import { unitsToLength, unitsUp } from "./whole-units.ts";

/** One board cut, with the row of the problem it comes from. */
export interface SourcedBoard {
  readonly cut: Omit<CutBoard, "board" | "layout">;
  readonly row: number;
}

interface Ends {
  readonly offcutU: number;
  readonly cutCount: number;
}

/**
 * What is left of a board, and how often the saw goes through. A square piece that ends at the
 * board's end needs no cut there. Mitred pieces need one cut more than there are pieces; two that
 * follow each other share theirs.
 */
function endsOf(group: PricedGroup, board: LaidBoard, shortU: (entry: number) => number): Ends {
  const kind = group.kinds[board.kind];
  const classes = board.pieces.flatMap(({ place }) => group.classes[place] ?? []);
  const last = classes[classes.length - 1];
  const mitred = classes.filter((each) => each.mitred).length;
  const filledU = board.pieces.reduce(
    (sum, { place, entry }) => sum + (group.classes[place]?.sizeU ?? 0) - shortU(entry),
    0,
  );
  const lastKerfU = last?.mitred ? group.mitreKerfU : group.kerfU;
  const restU = (kind?.lengthU ?? 0) - (filledU - lastKerfU);
  const usedUp = restU === 0 && last?.mitred === false;
  return {
    offcutU: Math.max(0, restU - lastKerfU),
    cutCount: classes.length + (mitred > 0 ? 1 : 0) - (usedUp ? 1 : 0),
  };
}

/** The boards of one group, each with its pieces, offcut and cuts, and the row it is taken from. */
export function cutBoards(
  problem: BoardProblem,
  group: PricedGroup,
  { boards, short }: { boards: readonly LaidBoard[]; short: ReadonlyMap<number, number> },
): SourcedBoard[] {
  const taken = new Map<number, number>();
  const rowFor = (kind: number): number => {
    const rows = group.kinds[kind]?.stock ?? [];
    const open = rows.find((row) => {
      const board = problem.stock[row];
      const limit = board?.limit ?? (board?.yard === null ? 1 : Number.POSITIVE_INFINITY);
      return (taken.get(row) ?? 0) < limit;
    });
    const row = open ?? rows[0] ?? 0;
    taken.set(row, (taken.get(row) ?? 0) + 1);
    return row;
  };
  return boards.flatMap((board) => {
    const row = rowFor(board.kind);
    const stock = problem.stock[row];
    if (!stock) return [];
    const shortU = (entry: number) => short.get(entry) ?? 0;
    const pieces = board.pieces.flatMap(({ entry }): CutPiece[] => {
      const piece = problem.pieces[entry];
      if (!piece) return [];
      const less = shortU(entry);
      const length = less === 0 ? piece.length : unitsToLength(unitsUp(piece.length.si) - less);
      const { name, bed, part, mitred = false } = piece;
      return [{ name, bed, part, length, mitred }];
    });
    const { offcutU, cutCount } = endsOf(group, board, shortU);
    const cut = {
      source: stock.yard ?? "kept",
      yard: stock.yard,
      section: group.section,
      timber: group.timber,
      length: stock.length,
      pieces,
      offcut: unitsToLength(offcutU),
      cutCount,
    };
    return [{ cut, row }];
  });
}
