import type { Caution } from "../check/index.ts";
import type { Piece, StockBoard } from "../lumber/index.ts";
import { type Money, printQuantity } from "../measure/index.ts";
import { oldTreatedWood } from "../safety/index.ts";
import type { TableReading } from "../table/index.ts";
import type { KeptBoards } from "./read-on-hand.ts";
import { isTreated } from "./timber-of.ts";

/** The first year whose treated wood for homes is without arsenic in the United States. */
const firstWithout = 2004;

/** Kept boards as stock, and those that are left out of beds for food. */
export interface KeptStock {
  readonly stock: readonly StockBoard[];
  readonly leftOut: readonly (KeptBoards & { readonly row: number })[];
  readonly cautions: readonly Caution[];
}

/** The boards kept, at no cost, without the treated ones from before 2004 where food is grown. */
export function keptStock(
  reading: TableReading<KeptBoards>,
  pieces: readonly Piece[],
  options: { readonly food: boolean; readonly nothing: Money },
): KeptStock {
  const stock: StockBoard[] = [];
  const leftOut: (KeptBoards & { readonly row: number })[] = [];
  for (const kept of reading.rows) {
    if (options.food && isOldTreated(kept, pieces)) {
      leftOut.push(kept);
      continue;
    }
    const { section, sound, count, timber } = kept;
    const named = timber === undefined ? {} : { timber };
    stock.push({
      yard: null,
      section,
      ...named,
      length: sound,
      price: options.nothing,
      limit: count,
    });
  }
  return {
    stock,
    leftOut,
    cautions: leftOut.length === 0 ? [] : [cautionFor(reading.table, leftOut)],
  };
}

// A board without a timber counts as what its section's pieces are made of.
function isOldTreated(kept: KeptBoards, pieces: readonly Piece[]): boolean {
  if (kept.bought === undefined || kept.bought.year >= firstWithout) return false;
  if (kept.timber !== undefined) return isTreated(kept.timber);
  return pieces.some(
    ({ section, timber }) => section.name === kept.section.name && isTreated(timber),
  );
}

function cautionFor(
  table: string,
  leftOut: readonly (KeptBoards & { readonly row: number })[],
): Caution {
  const boards = leftOut.map(
    ({ row, count, section, length }) =>
      `row ${row} (${count} of ${section.name}, ${printQuantity(length)})`,
  );
  return oldTreatedWood({ because: `${table}, ${boards.join(", ")}: left out of beds for food` });
}
