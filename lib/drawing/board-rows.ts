import type { Length, UnitSystem } from "../measure/index.ts";
import { tapeLength, textWidth } from "./labels.ts";
import { grain, hatched } from "./marks.ts";
import { type DrawnPiece, type PieceLetter, pieceKey } from "./piece-letters.ts";
import { box, svg, type Tree, withFractions } from "./tree.ts";

/** What a drawing needs to know of one board used: a board of a board plan will do. */
export interface DrawnBoard {
  readonly board: string;
  readonly source: string;
  readonly yard: string | null;
  readonly section: { readonly name: string; readonly width: Length };
  readonly timber: string;
  readonly length: Length;
  readonly pieces: readonly DrawnPiece[];
  readonly offcut: Length;
  readonly cutCount: number;
  /** Boards cut alike have equal numbers; left out, boards are compared. */
  readonly layout?: number;
}

/** Boards cut alike: one row of the drawing. */
export interface BoardRow {
  readonly board: DrawnBoard;
  readonly names: readonly string[];
}

/** Boards under one heading: kept, or of one yard; of one section and timber. */
export interface BoardGroup {
  readonly kept: boolean;
  readonly yard: string | null;
  readonly section: string;
  readonly timber: string;
  readonly rows: readonly BoardRow[];
}

/** Kept boards first, then yard by yard; in each, boards cut alike in one row. */
export function boardGroups(cuts: readonly DrawnBoard[]): readonly BoardGroup[] {
  const groups = new Map<string, { first: DrawnBoard; rows: Map<string, DrawnBoard[]> }>();
  for (const board of cuts) {
    const groupKey = [board.yard ?? "", board.section.name, board.timber].join("|");
    const group = groups.get(groupKey) ?? { first: board, rows: new Map<string, DrawnBoard[]>() };
    groups.set(groupKey, group);
    const rowKey = layoutKey(board);
    group.rows.set(rowKey, [...(group.rows.get(rowKey) ?? []), board]);
  }
  const keptFirst = (a: { first: DrawnBoard }, b: { first: DrawnBoard }) =>
    Number(b.first.yard === null) - Number(a.first.yard === null);
  return [...groups.values()].sort(keptFirst).map(({ first, rows }) => ({
    kept: first.yard === null,
    yard: first.yard,
    section: first.section.name,
    timber: first.timber,
    rows: [...rows.values()].flatMap((boards) => {
      const board = boards[0];
      return board === undefined ? [] : [{ board, names: boards.map((each) => each.board) }];
    }),
  }));
}

function layoutKey(board: DrawnBoard): string {
  const pieces = board.pieces.map((piece) => pieceKey(piece, board.section.name)).join(" ");
  return `${Math.round(board.length.si * 1e5)} ${pieces}`;
}

export interface BoardLook {
  readonly pxPerM: number;
  readonly units: UnitSystem;
  readonly letters: ReadonlyMap<string, PieceLetter>;
}

export const pieceTextPx = 13.5;
const leastForTextInside = 18;

/** How high a board is drawn, and with its labels under it where it is too narrow for text. */
export function boardHeight(
  board: DrawnBoard,
  pxPerM: number,
): { readonly board: number; readonly all: number } {
  const high = board.section.width.si * pxPerM;
  return { board: high, all: high >= leastForTextInside ? high : high + 18 };
}

/** A board on its face with its pieces, saw cuts and offcut. */
export function drawnBoard(
  board: DrawnBoard,
  at: { readonly x: number; readonly y: number },
  look: BoardLook,
): readonly Tree[] {
  const { pxPerM } = look;
  const { x, y } = at;
  const high = board.section.width.si * pxPerM;
  const long = board.length.si * pxPerM;
  const kept = board.yard === null;
  const parts: Tree[] = [box(kept ? "kept" : "board", x, y, long, high)];
  if (kept) parts.push(grain(x, y, long, high));
  const kerfM = kerfOf(board);
  const cuts: Tree[] = [];
  const labels: Tree[] = [];
  let fromM = 0;
  board.pieces.forEach((piece, place) => {
    const wide = piece.length.si * pxPerM;
    labels.push(...pieceLabel(piece, board, { x: x + fromM * pxPerM, y, wide, high }, look));
    fromM += piece.length.si;
    if (place < board.cutCount) {
      // A saw cut stays visible where the scale would make it a hair.
      const cutWide = Math.max(kerfM * pxPerM, 1.6);
      const middle = x + (fromM + kerfM / 2) * pxPerM;
      cuts.push(box("kerf", middle - cutWide / 2, y - 4, cutWide, high + 8));
      fromM += kerfM;
    }
  });
  const over = board.offcut.si * pxPerM;
  if (over > 1) parts.push(...hatched(x + long - over, y, over, high));
  return [...parts, ...labels, ...cuts];
}

function kerfOf(board: DrawnBoard): number {
  if (board.cutCount === 0) return 0;
  const piecesM = board.pieces.reduce((sum, piece) => sum + piece.length.si, 0);
  return Math.max(0, (board.length.si - piecesM - board.offcut.si) / board.cutCount);
}

function pieceLabel(
  piece: DrawnPiece,
  board: DrawnBoard,
  where: { readonly x: number; readonly y: number; readonly wide: number; readonly high: number },
  look: BoardLook,
): readonly Tree[] {
  const letter = look.letters.get(pieceKey(piece, board.section.name))?.letter ?? "";
  const length = tapeLength(piece.length, look.units);
  const inside = where.high >= leastForTextInside;
  const full = textWidth(`${letter} ${length}`, pieceTextPx) + 8;
  const short = textWidth(letter, pieceTextPx) + 2;
  if (where.wide < short) return [];
  const children =
    where.wide >= full
      ? [svg("tspan", { class: "letter" }, [letter]), ...withFractions(` ${length}`)]
      : [svg("tspan", { class: "letter" }, [letter])];
  const middle = where.x + where.wide / 2;
  const baseline = inside ? where.y + where.high / 2 + 4.8 : where.y + where.high + 15;
  const kind = inside ? "piece" : "piece under";
  return [svg("text", { class: kind, x: middle, y: baseline, "text-anchor": "middle" }, children)];
}
