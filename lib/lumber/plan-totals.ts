import { type Length, type Money, quantity } from "../measure/index.ts";
import type { CutBoard, ShortenedPiece } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { SourcedBoard } from "./cut-boards.ts";
import { metresToLength } from "./saw-length.ts";

const moneyDimension = [0, 0, 0, 1, 0] as const;

/** Money in the currency the prices are in, if they name one. */
export function inCurrencyOf(problem: BoardProblem, amount: number): Money {
  const currency = problem.stock.find((board) => board.price.currency !== undefined)?.price
    .currency;
  // Sums of decimal prices: what binary fractions add in the last places is no money.
  return quantity(Number(amount.toFixed(9)), moneyDimension, currency);
}

/** Boards labelled and their layouts numbered: equal boards with equal pieces in equal order. */
export function labelled(boards: readonly SourcedBoard[]): CutBoard[] {
  const layouts = new Map<string, number>();
  let bought = 0;
  let kept = 0;
  return boards.map(({ cut }) => {
    const label = cut.yard === null ? `K${++kept}` : `B${++bought}`;
    const parts = cut.pieces.map(
      (piece) => `${piece.length.si.toFixed(6)}${piece.mitred ? "m" : ""}`,
    );
    const halves =
      cut.atYard === null ? "" : `/${cut.atYard.pieces} ${cut.atYard.first.si.toFixed(6)}`;
    const board = `${cut.section.name} ${cut.timber} ${cut.length.si.toFixed(6)}`;
    const key = `${board}: ${parts.join()}${halves}`;
    const layout = layouts.get(key) ?? layouts.size + 1;
    layouts.set(key, layout);
    return { board: label, ...cut, layout };
  });
}

/** The pieces cut shorter than asked, by how much. */
export function shortenedPieces(
  problem: BoardProblem,
  cuts: ReadonlyMap<number, Length>,
): ShortenedPiece[] {
  return [...cuts]
    .sort(([a], [b]) => a - b)
    .flatMap(([entry, cut]) => {
      const piece = problem.pieces[entry];
      if (!piece) return [];
      const { name, bed, count, length: asked } = piece;
      return [{ name, bed, count, asked, cut, short: metresToLength(asked.si - cut.si) }];
    });
}

export function totalLength(lengths: readonly Length[]): Length {
  return metresToLength(lengths.reduce((sum, length) => sum + length.si, 0));
}
