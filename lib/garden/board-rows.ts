import type { BoardPlan } from "../lumber/index.ts";
import { type Length, type Money, printQuantity, type UnitSystem } from "../measure/index.ts";
import type { GardenBill } from "./garden-bill.ts";

/** A line of the list to take to the yard. */
export interface BoardRow {
  readonly yard: string;
  readonly section: string;
  readonly timber: string;
  readonly length: Length;
  readonly count: number;
  readonly price: Money;
  readonly total: Money;
}

/**
 * The boards to buy, by yard.
 *
 * @param bill as `gardenBill` gives it; its boards, spare ones included
 * @rule the bill's lines of boards
 * @source common practice
 */
export function boardsToBuy(bill: GardenBill): readonly BoardRow[] {
  return bill.receipts.flatMap(({ yard, lines }) =>
    lines.flatMap((line): BoardRow[] => {
      const { board, count, price, total } = line;
      if (board === undefined) return [];
      return [{ yard, ...board, length: line.size as Length, count, price, total }];
    }),
  );
}

/** One board that is used, bought or kept. */
export interface CutRow {
  /** What is chalked on it. */
  readonly board: string;
  /** The yard, or `kept`. */
  readonly source: string;
  readonly section: string;
  readonly timber: string;
  readonly length: Length;
  /** Its pieces in the order they are cut, each with its length. */
  readonly pieces: string;
  readonly offcut: Length;
}

/**
 * One row for every board used, cut or not, kept boards too.
 *
 * @param plan as `planBoards` gives it, or null for none
 * @param options `system` in which the pieces' lengths are written; default `us`
 * @rule the cuts of the plan
 * @source common practice
 */
export function cutRows(
  plan: BoardPlan | null,
  options: { readonly system?: UnitSystem } = {},
): readonly CutRow[] {
  const { system = "us" } = options;
  return (plan?.cuts ?? []).map((cut) => ({
    board: cut.board,
    source: cut.source,
    section: cut.section.name,
    timber: cut.timber,
    length: cut.length,
    pieces: cut.pieces
      .map((piece) => `${piece.name} ${printQuantity(piece.length, { system })}`)
      .join("; "),
    offcut: cut.offcut,
  }));
}
