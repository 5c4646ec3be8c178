import {
  type BuyingChoices,
  type GardenBill,
  type GardenBuying,
  type GardenNeed,
  gardenBeds,
  gardenBill,
  gardenPieces,
  type Need,
  planGardenBuying,
} from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { tables } from "./garden.ts";

type Texts = Parameters<typeof tables>[0];

/** What a garden needs, for tables as text and needs as given. */
export function gardenNeed(texts: Texts, needs: readonly Need[] = []): GardenNeed {
  const { beds: bedRows, onHand, yards, prices, pieces: listed } = tables(texts);
  const { beds } = gardenBeds(bedRows, {}, prices.rows);
  const hand = listed?.rows ?? [];
  const { pieces } = gardenPieces(beds, { prices: prices.rows, hand });
  return { pieces, needs, onHand, yards, prices };
}

export async function buying(
  texts: Texts,
  needs: readonly Need[] = [],
  choices: Partial<BuyingChoices> = {},
): Promise<GardenBuying> {
  return planGardenBuying(gardenNeed(texts, needs), { ...choices, solve: await solver() });
}

export async function bill(
  texts: Texts,
  needs: readonly Need[] = [],
  choices: Partial<BuyingChoices> = {},
): Promise<GardenBill> {
  const { beds, prices } = tables(texts);
  const made = gardenBeds(beds, {}, prices.rows);
  return gardenBill(await buying(texts, needs, choices), made.beds);
}

/** Money in cents, which whole sums are compared in. */
export const cents = (money: { readonly si: number }): number => Math.round(money.si * 100);
