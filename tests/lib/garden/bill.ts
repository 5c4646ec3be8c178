import {
  type BillInput,
  type GardenBill,
  gardenBeds,
  gardenBill,
  gardenPieces,
  type MoneyChoices,
  type Need,
  planGardenBoards,
} from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { tables } from "./garden.ts";

/** What a bill is made from, for tables as text and needs as given. */
export async function billInput(
  texts: Parameters<typeof tables>[0],
  needs: readonly Need[] = [],
  spareBoards = 0,
): Promise<BillInput> {
  const read = tables(texts);
  const { beds } = gardenBeds(read.beds, {}, read.prices.rows);
  const { pieces } = gardenPieces(beds, { prices: read.prices.rows });
  const { onHand, yards, prices } = read;
  const solve = await solver();
  const boards = await planGardenBoards({ pieces, onHand, yards, prices }, { solve, spareBoards });
  return { boards, needs, prices, yards, beds };
}

export async function bill(
  texts: Parameters<typeof tables>[0],
  needs: readonly Need[] = [],
  choices: Partial<MoneyChoices> & { readonly spareBoards?: number } = {},
): Promise<GardenBill> {
  const { spareBoards, ...money } = choices;
  return gardenBill(await billInput(texts, needs, spareBoards), money);
}

/** Money in cents, which whole sums are compared in. */
export const cents = (money: { readonly si: number }): number => Math.round(money.si * 100);
