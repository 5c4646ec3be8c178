import type { Columns } from "../table/index.ts";
import { bedColumns } from "./read-beds.ts";
import { onHandColumns } from "./read-on-hand.ts";
import { pieceColumns } from "./read-pieces.ts";
import { priceColumns } from "./read-prices.ts";
import { yardColumns } from "./read-yards.ts";

/** A column of a garden's table. */
export interface GardenColumn {
  readonly name: string;
  /** Whether every row fills it in. */
  readonly required: boolean;
}

/** The columns of each of a garden's tables, in the order in which they are usually written. */
export const gardenColumns: Readonly<
  Record<"beds" | "onHand" | "yards" | "prices" | "pieces", readonly GardenColumn[]>
> = Object.freeze({
  beds: described(bedColumns),
  onHand: described(onHandColumns),
  yards: described(yardColumns),
  prices: described(priceColumns),
  pieces: described(pieceColumns),
});

function described(columns: Columns): readonly GardenColumn[] {
  return Object.freeze(
    Object.entries(columns).map(([name, { must }]) => Object.freeze({ name, required: must })),
  );
}
