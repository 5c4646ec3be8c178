import type { BoardPrice, PriceLine } from "../cost/index.ts";
import type { Piece, StockBoard } from "../lumber/index.ts";

export const boardLines = (prices: readonly PriceLine[]): readonly BoardPrice[] =>
  prices.filter((line) => line.kind === "board");

/** What is told apart when boards are bought: section and timber. */
export function groupOf(board: Pick<Piece, "section"> & { readonly timber?: string | undefined }) {
  return `${board.section.name} ${board.timber ?? ""}`;
}

/** The same with the length, to a hundredth of a millimetre. */
export function kindOf(
  board: Pick<Piece, "section" | "length"> & { readonly timber?: string | undefined },
): string {
  return `${groupOf(board)} ${board.length.si.toFixed(5)}`;
}

/**
 * Boards that can be bought when one yard is the main one: its own, and those of other yards for
 * sections it has none of. A price that holds only from some number on is left to the bill, unless
 * there is no other for that length.
 */
export function stockAt(
  main: string,
  lines: readonly BoardPrice[],
  pieces: readonly Piece[],
): StockBoard[] {
  const needed = new Set(pieces.map(groupOf));
  const atMain = new Set(lines.filter(({ yard }) => yard === main).map(groupOf));
  const offered = lines.filter(
    (line) => needed.has(groupOf(line)) && (line.yard === main || !atMain.has(groupOf(line))),
  );
  return plainPrices(offered).map(toStock);
}

/** All boards of all yards. */
export function stockEverywhere(
  lines: readonly BoardPrice[],
  pieces: readonly Piece[],
): StockBoard[] {
  const needed = new Set(pieces.map(groupOf));
  return plainPrices(lines.filter((line) => needed.has(groupOf(line)))).map(toStock);
}

function plainPrices(lines: readonly BoardPrice[]): BoardPrice[] {
  const place = (line: BoardPrice) => `${line.yard} ${kindOf(line)}`;
  const withPlain = new Set(lines.filter(({ from }) => from <= 1).map(place));
  return lines.filter((line) => line.from <= 1 || !withPlain.has(place(line)));
}

function toStock(line: BoardPrice): StockBoard {
  const { yard, section, timber, length, price, limit } = line;
  return {
    yard,
    section,
    ...(timber === undefined ? {} : { timber }),
    length,
    price,
    ...(limit === undefined ? {} : { limit }),
  };
}
