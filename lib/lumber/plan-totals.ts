import { type Length, type Money, quantity } from "../measure/index.ts";
import type { BuyLine, CutBoard, ShortenedPiece } from "./board-plan.ts";
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
    const board = cut.yard === null ? `K${++kept}` : `B${++bought}`;
    const parts = cut.pieces.map(
      (piece) => `${piece.length.si.toFixed(6)}${piece.mitred ? "m" : ""}`,
    );
    const key = `${cut.section.name} ${cut.timber} ${cut.length.si.toFixed(6)}: ${parts.join()}`;
    const layout = layouts.get(key) ?? layouts.size + 1;
    layouts.set(key, layout);
    return { board, ...cut, layout };
  });
}

/** The buying list: a line for each row of the stock that boards are bought of. */
export function buyLines(problem: BoardProblem, boards: readonly SourcedBoard[]): BuyLine[] {
  const counts = new Map<number, number>();
  for (const { row, cut } of boards) {
    if (cut.yard !== null) counts.set(row, (counts.get(row) ?? 0) + 1);
  }
  const timbers = new Map(boards.map(({ row, cut }) => [row, cut.timber]));
  return [...counts].flatMap(([row, count]): BuyLine[] => {
    const stock = problem.stock[row];
    if (!stock || stock.yard === null) return [];
    const { yard, section, length, price } = stock;
    const sum = inCurrencyOf(problem, price.si * count);
    return [{ yard, section, timber: timbers.get(row) ?? "", length, count, price, sum }];
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
