import type { Length } from "../measure/index.ts";
import { type DrawnPiece, pieceKey } from "./piece-letters.ts";

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
  /** What is sawn off first to square its end. Default: nothing. */
  readonly squared?: Length;
  /** Where the yard cuts it in two. Default: nowhere. */
  readonly atYard?: {
    readonly first: Length;
    readonly pieces: number;
    readonly rest: Length;
  } | null;
  /** Boards cut alike have equal numbers; left out, boards are compared. */
  readonly layout?: number;
}

/** Boards cut alike: one row of the drawing. */
export interface BoardRow {
  readonly board: DrawnBoard;
  readonly names: readonly string[];
  /** For each place of a piece, the beds it goes to on these boards. */
  readonly beds: readonly (readonly string[])[];
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
      if (board === undefined) return [];
      const beds = board.pieces.map((_, place) => [
        ...new Set(boards.map((each) => each.pieces[place]?.bed ?? "").filter((bed) => bed !== "")),
      ]);
      return [{ board, names: boards.map((each) => each.board), beds }];
    }),
  }));
}

function layoutKey(board: DrawnBoard): string {
  const pieces = board.pieces.map((piece) => pieceKey(piece, board.section.name)).join(" ");
  const { length, squared, atYard } = board;
  const ends = [length, squared, atYard?.first].map((each) => Math.round((each?.si ?? 0) * 1e5));
  return `${ends.join(" ")} ${atYard?.pieces ?? ""} ${pieces}`;
}
