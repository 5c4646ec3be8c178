import { greatestDivisor } from "./whole-units.ts";

interface Lot {
  readonly place: number;
  readonly pieces: number;
  readonly sizeT: number;
}

// The table has a row for each lot of pieces and a column for each length up to the longest board;
// past this many entries, lengths are measured more coarsely.
const mostCells = 12_000_000;

/** The most valuable filling of every length at once. */
export interface Knapsack {
  /** Value of the best filling of a board; never less than the true one. */
  valueOf(capacityU: number): number;
  /** A best filling; where lengths had to be measured coarsely, it may be too long for the board. */
  fillingOf(capacityU: number): number[];
}

/** A table to fill again and again with other values of the pieces. */
export interface KnapsackTable {
  fill(values: readonly number[]): Knapsack;
  /** How many entries a filling looks at. */
  readonly cells: number;
}

/**
 * Makes the table that prices patterns: sizes and how many of each there are; then, for values of
 * the pieces, the most valuable filling of any length. Where the table would be too long, sizes are
 * rounded down and boards up: the values are then bounds from above, which is the safe side.
 *
 * Bounded knapsack by lots of 1, 2, 4, … pieces; the use of one table for all boards follows Gilmore
 * and Gomory (1961, 1963).
 */
export function knapsackTable(
  sizesU: readonly number[],
  most: readonly number[],
  longestU: number,
): KnapsackTable {
  const divisor = sizesU.reduce(greatestDivisor, 0) || 1;
  const fits = sizesU.map((sizeU, i) => Math.min(most[i] ?? 0, Math.floor(longestU / sizeU)));
  const rows = fits.reduce((sum, count) => sum + lotsOf(count).length, 0);
  const unit = Math.max(divisor, Math.ceil((longestU * rows) / mostCells));
  const coarse = unit > divisor;
  const columns = coarse ? Math.ceil(longestU / unit) : Math.floor(longestU / unit);
  const toTable = (capacityU: number) =>
    Math.min(columns, coarse ? Math.ceil(capacityU / unit) : Math.floor(capacityU / unit));
  const lots: Lot[] = sizesU.flatMap((sizeU, place) => {
    const sizeT = Math.floor(sizeU / unit);
    return lotsOf(fits[place] ?? 0).map((pieces) => ({ place, pieces, sizeT: sizeT * pieces }));
  });
  const best = new Float64Array(columns + 1);
  const taken = new Uint8Array(rows * (columns + 1));
  const fill = (values: readonly number[]): Knapsack => {
    best.fill(0);
    taken.fill(0);
    for (const [row, { place, pieces, sizeT }] of lots.entries()) {
      const worth = (values[place] ?? 0) * pieces;
      if (worth <= 0) continue;
      const offset = row * (columns + 1);
      for (let at = columns; at >= sizeT; at--) {
        const withLot = (best[at - sizeT] ?? 0) + worth;
        if (withLot > (best[at] ?? 0) + 1e-11) {
          best[at] = withLot;
          taken[offset + at] = 1;
        }
      }
    }
    return {
      valueOf: (capacityU) => best[toTable(capacityU)] ?? 0,
      fillingOf(capacityU) {
        const counts = sizesU.map(() => 0);
        let at = toTable(capacityU);
        for (let row = lots.length - 1; row >= 0; row--) {
          const lot = lots[row];
          if (!lot || taken[row * (columns + 1) + at] !== 1) continue;
          counts[lot.place] = (counts[lot.place] ?? 0) + lot.pieces;
          at -= lot.sizeT;
        }
        return counts;
      },
    };
  };
  return { fill, cells: taken.length };
}

/** A number as a sum of lots, so that every smaller number is a sum of some of them. */
function lotsOf(pieces: number): number[] {
  const lots: number[] = [];
  for (let left = pieces, lot = 1; left > 0; lot *= 2) {
    const take = Math.min(lot, left);
    lots.push(take);
    left -= take;
  }
  return lots;
}
