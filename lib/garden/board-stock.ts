import { groupOf } from "../buying/board-kind.ts";
import type { PriceLine } from "../cost/index.ts";
import type { Piece, StockBoard } from "../lumber/index.ts";

/** Boards on sale of the sections and timbers that are wanted, each price an offer of its own. */
export function boardStock(
  prices: readonly PriceLine[],
  pieces: readonly Piece[],
): readonly StockBoard[] {
  const wanted = new Set(pieces.map(groupOf));
  return prices.flatMap((line): StockBoard[] => {
    if (line.kind !== "board" || !wanted.has(groupOf(line))) return [];
    const { yard, section, timber, length, price, limit } = line;
    return [
      {
        yard,
        section,
        ...(timber === undefined ? {} : { timber }),
        length,
        price,
        ...(limit === undefined ? {} : { limit: Math.floor(limit) }),
        // A part of a board is not sold.
        from: Math.max(1, Math.ceil(line.from)),
        step: Math.max(1, Math.ceil(line.step)),
      },
    ];
  });
}
