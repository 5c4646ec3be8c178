import type { DrawnBoard } from "./board-groups.ts";

/** Where things lie along a board, in metres from its end. */
export interface BoardLay {
  readonly pieces: readonly { readonly fromM: number; readonly longM: number }[];
  readonly cuts: readonly LaidCut[];
  /** What is left over or sawn off. */
  readonly over: readonly { readonly fromM: number; readonly longM: number }[];
}

export interface LaidCut {
  readonly fromM: number;
  readonly wideM: number;
  /** The order of sawing, from 1. */
  readonly order: number;
  readonly atYard: boolean;
}

const hairM = 1e-5;

/** The saw's kerf where nobody says it: what pieces, offcut and cuts leave of the board. */
function kerfFrom(board: DrawnBoard): number {
  const squaredM = board.squared?.si ?? 0;
  const cutCount = board.cutCount - (squaredM > 0 ? 1 : 0);
  if (cutCount <= 0) return 0;
  const piecesM = board.pieces.reduce((sum, piece) => sum + piece.length.si, 0);
  const restM = board.offcut.si + (board.atYard?.rest.si ?? 0);
  return Math.max(0, (board.length.si - squaredM - piecesM - restM) / cutCount);
}

/** Where pieces, cuts and what is left over lie: the yard's cut is the first, then what squares it. */
export function boardLay(board: DrawnBoard, kerfM = kerfFrom(board)): BoardLay {
  const { length, offcut, squared, atYard = null } = board;
  const squaredM = squared?.si ?? 0;
  const yardM = atYard?.first.si;
  const pieces: { fromM: number; longM: number }[] = [];
  const over: { fromM: number; longM: number }[] = [];
  const cuts: LaidCut[] = [];
  let left = board.cutCount;
  const cut = (fromM: number, isAtYard = false) => {
    if (left <= 0) return;
    left -= 1;
    cuts.push({ fromM, wideM: kerfM, order: cuts.length + 1, atYard: isAtYard });
  };
  if (yardM !== undefined) cut(yardM, true);
  if (squaredM > 0) {
    over.push({ fromM: 0, longM: squaredM });
    cut(Math.max(0, squaredM - kerfM));
  }
  const lay = (some: DrawnBoard["pieces"], fromM: number, toM: number) => {
    let atM = fromM;
    for (const [index, piece] of some.entries()) {
      // A piece that is mitred at both ends needs a cut before it too.
      if (piece.mitred === true && some[index - 1]?.mitred !== true) cut(atM);
      pieces.push({ fromM: atM, longM: piece.length.si });
      atM += piece.length.si;
      if (piece.mitred === true || atM < toM - hairM) cut(atM);
      atM += kerfM;
    }
  };
  const onFirst = atYard?.pieces ?? board.pieces.length;
  lay(board.pieces.slice(0, onFirst), squaredM, yardM ?? length.si);
  if (atYard !== null && yardM !== undefined) {
    lay(board.pieces.slice(onFirst), yardM + kerfM, length.si);
    over.push({ fromM: yardM - atYard.rest.si, longM: atYard.rest.si });
  }
  over.push({ fromM: length.si - offcut.si, longM: offcut.si });
  return { pieces, cuts, over: over.filter(({ longM }) => longM > 0) };
}
