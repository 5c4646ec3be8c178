import type { UnitSystem } from "../measure/index.ts";
import type { BoardRow, DrawnBoard } from "./board-groups.ts";
import { leastForTextInside, pieceLabel } from "./board-labels.ts";
import { boardLay, type LaidCut } from "./board-lay.ts";
import { textWidth } from "./labels.ts";
import { grain, hatched } from "./marks.ts";
import { type PieceLetter, pieceKey } from "./piece-letters.ts";
import { box, type Tree, words } from "./tree.ts";

/** How boards are drawn in one drawing. */
export interface BoardLook {
  readonly pxPerM: number;
  readonly units: UnitSystem;
  readonly letters: ReadonlyMap<string, PieceLetter>;
  /** Width of the saw cut; where nobody says it, what is left of the board between its pieces. */
  readonly kerfM: number | undefined;
}

/** What numbers of cuts take above a board. */
export const orderHigh = 15;

/** How high a board is drawn, and with its labels under it where it is too narrow for text. */
export function boardHeight(
  board: DrawnBoard,
  pxPerM: number,
): { readonly board: number; readonly all: number } {
  const high = board.section.width.si * pxPerM;
  return { board: high, all: high >= leastForTextInside ? high : high + 18 };
}

/** A board on its face with its pieces, saw cuts in their order, and what is left over. */
export function drawnBoard(
  row: BoardRow,
  at: { readonly x: number; readonly y: number },
  look: BoardLook,
): readonly Tree[] {
  const { board, beds } = row;
  const { pxPerM } = look;
  const { x, y } = at;
  const high = board.section.width.si * pxPerM;
  const long = board.length.si * pxPerM;
  const lay = boardLay(board, look.kerfM);
  const kept = board.yard === null;
  const over = lay.over.filter(({ longM }) => longM * pxPerM > 1);
  return [
    box(kept ? "kept" : "board", x, y, long, high),
    ...(kept ? [grain(x, y, long, high)] : []),
    ...over.flatMap(({ fromM, longM }) => hatched(x + fromM * pxPerM, y, longM * pxPerM, high)),
    ...lay.pieces.flatMap(({ fromM, longM }, place) => {
      const piece = board.pieces[place];
      if (piece === undefined) return [];
      const letter = look.letters.get(pieceKey(piece, board.section.name))?.letter ?? "";
      const where = { x: x + fromM * pxPerM, y, wide: longM * pxPerM, high };
      return pieceLabel({ piece, letter, beds: beds[place] ?? [] }, where, look.units);
    }),
    ...sawCuts(lay.cuts, { x, y, high }, pxPerM),
  ];
}

function sawCuts(
  cuts: readonly LaidCut[],
  { x, y, high }: { readonly x: number; readonly y: number; readonly high: number },
  pxPerM: number,
): readonly Tree[] {
  let freeFrom = Number.NEGATIVE_INFINITY;
  const sorted = [...cuts].sort((a, b) => a.fromM - b.fromM);
  return sorted.flatMap(({ fromM, wideM, order, atYard }) => {
    // A saw cut stays visible where the scale would make it a hair.
    const wide = Math.max(wideM * pxPerM, 1.6);
    const middle = x + (fromM + wideM / 2) * pxPerM;
    const line = atYard
      ? doubleLine(middle, y - 4, high + 8)
      : [box("kerf", middle - wide / 2, y - 4, wide, high + 8)];
    const text = String(order);
    const half = textWidth(text, 12) / 2;
    if (middle - half < freeFrom) return line;
    freeFrom = middle + half + 3;
    return [...line, words("order", text, { x: middle, y: y - 6, anchor: "middle" })];
  });
}

/** The cut that the yard makes. */
export function doubleLine(x: number, y: number, high: number): readonly Tree[] {
  return [box("kerf", x - 2.6, y, 1.6, high), box("kerf", x + 1, y, 1.6, high)];
}
