import type { CutBoard, CutPiece } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { LaidPiece } from "./deal-pieces.ts";
import { type LaidBoard, runsOf } from "./lay-out.ts";
import type { CuttingGroup } from "./make-groups.ts";
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
 * What is left of a board or a part of one, and how often the saw goes through. A square piece that
 * ends at the board's end needs no cut there. Mitred pieces need one cut more than there are pieces;
 * two that follow each other share theirs.
 */
function endsOf(
  group: CuttingGroup,
  run: { readonly pieces: readonly LaidPiece[]; readonly roomU: number },
  shortU: (entry: number) => number,
): Ends {
  const lengthU = run.roomU - group.part.kerfU;
  const classes = run.pieces.flatMap(({ place }) => group.classes[place] ?? []);
  const last = classes[classes.length - 1];
  if (!last) return { offcutU: Math.max(0, lengthU), cutCount: 0 };
  const mitred = classes.filter((each) => each.mitred).length;
  const filledU = run.pieces.reduce(
    (sum, { place, entry }) => sum + (group.classes[place]?.sizeU ?? 0) - shortU(entry),
    0,
  );
  const lastKerfU = last.mitred ? group.mitreKerfU : group.kerfU;
  const restU = lengthU - (filledU - lastKerfU);
  const usedUp = restU <= 0 && !last.mitred;
  return {
    offcutU: Math.max(0, restU - lastKerfU),
    cutCount: classes.length + (mitred > 0 ? 1 : 0) - (usedUp ? 1 : 0),
  };
}

/** The boards of one group, each with its pieces, offcut and cuts, and the row it is taken from. */
export function cutBoards(
  problem: BoardProblem,
  group: CuttingGroup,
  { boards, short }: { boards: readonly LaidBoard[]; short: ReadonlyMap<number, number> },
): SourcedBoard[] {
  const rowFor = rowsInTurn(problem, group);
  const shortU = (entry: number) => short.get(entry) ?? 0;
  return boards.flatMap((board) => {
    const row = rowFor(board.kind);
    const stock = problem.stock[row];
    if (!stock) return [];
    const pieces = board.pieces.flatMap(({ entry }) => cutPiece(problem, entry, shortU(entry)));
    const runs = runsOf(group, board);
    const ends = runs.map((run) => endsOf(group, run, shortU));
    const own = ends.reduce((sum, each) => sum + each.cutCount, 0);
    const cut = {
      source: stock.yard ?? "kept",
      yard: stock.yard,
      section: group.section,
      timber: group.timber,
      length: stock.length,
      pieces,
      offcut: unitsToLength(ends[ends.length - 1]?.offcutU ?? 0),
      squared: unitsToLength(group.squaringU),
      atYard: yardCut(group, board, ends[0]?.offcutU ?? 0),
      cutCount: own + (group.squaringU > 0 ? 1 : 0) + runs.length - 1,
    };
    return [{ cut, row }];
  });
}

/** The row each board of a kind is taken from: one after the other, as far as each goes. */
function rowsInTurn(problem: BoardProblem, group: CuttingGroup): (kind: number) => number {
  const taken = new Map<number, number>();
  return (kind) => {
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
}

function cutPiece(problem: BoardProblem, entry: number, lessU: number): CutPiece[] {
  const piece = problem.pieces[entry];
  if (!piece) return [];
  const length = lessU === 0 ? piece.length : unitsToLength(unitsUp(piece.length.si) - lessU);
  const { name, bed, part, mitred = false } = piece;
  return [{ name, bed, part, length, mitred }];
}

function yardCut(group: CuttingGroup, board: LaidBoard, restU: number): CutBoard["atYard"] {
  if (board.first === null) return null;
  return {
    first: unitsToLength(group.squaringU + board.first.roomU - group.part.kerfU),
    pieces: board.first.pieces,
    rest: unitsToLength(restU),
  };
}
