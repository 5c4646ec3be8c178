import { type CutKind, type CutPart, filledU, longestU } from "./cut-part.ts";
import { greatestDivisor } from "./divisor.ts";

interface Lot {
  readonly place: number;
  readonly pieces: number;
  readonly sizeT: number;
}

/** The most valuable fillings of all boards at once. */
export interface Fillings {
  /** Value of the best filling of a board and its rest; never less than the true one. */
  worthOf(kind: number): number;
  /** A best filling; where lengths had to be measured coarsely, it may be too long for the board. */
  countsOf(kind: number): number[];
}

/** A table to fill again and again with other values of the pieces. */
export interface FillingTable {
  fill(values: readonly number[]): Fillings;
  /** How many entries a filling looks at. */
  readonly cells: number;
}

// The table has a row for each lot of pieces and a column for each length up to the longest board;
// past this many entries, lengths are measured more coarsely.
const mostCells = 12_000_000;

const nothing = Number.NEGATIVE_INFINITY;

/** A number as a sum of lots, so that every smaller number is a sum of some of them. */
export function lotsOf(pieces: number): number[] {
  const lots: number[] = [];
  for (let left = pieces, lot = 1; left > 0; lot *= 2) {
    const take = Math.min(lot, left);
    lots.push(take);
    left -= take;
  }
  return lots;
}

/** The unit in which a part's sizes are measured, and whether it is coarser than they are. */
export function tableUnit(
  sizesU: readonly number[],
  rows: number,
  longestU: number,
): { readonly unit: number; readonly coarse: boolean } {
  const divisor = sizesU.reduce(greatestDivisor, 0) || 1;
  const unit = Math.max(divisor, Math.ceil((longestU * rows) / mostCells));
  return { unit, coarse: unit > divisor };
}

/**
 * Makes the table that prices patterns: for values of the pieces, the most valuable filling of every
 * length. Where the table would be too long, sizes are rounded down and boards up: the values are
 * then bounds from above, which is the safe side.
 *
 * Bounded knapsack by lots of 1, 2, 4, … pieces; the use of one table for all boards follows Gilmore
 * and Gomory (1961, 1963).
 */
export function fillingTable(part: CutPart, sizesU: readonly number[]): FillingTable {
  const longest = Math.max(0, ...part.kinds.map(longestU));
  const most = sizesU.map((sizeU, i) =>
    Math.min(part.classes[i]?.demand ?? 0, Math.floor(longest / sizeU)),
  );
  const rows = most.reduce((sum, count) => sum + lotsOf(count).length, 0);
  const { unit, coarse } = tableUnit(sizesU, rows, longest);
  const toTable = coarse
    ? (roomU: number) => Math.ceil(roomU / unit)
    : (roomU: number) => Math.floor(roomU / unit);
  const columns = toTable(longest);
  const width = columns + 1;
  const lots: Lot[] = sizesU.flatMap((sizeU, place) =>
    lotsOf(most[place] ?? 0).map((pieces) => ({
      place,
      pieces,
      sizeT: Math.floor(sizeU / unit) * pieces,
    })),
  );
  const best = new Float64Array(width);
  const taken = new Uint8Array(rows * width);
  const upTo = new Float64Array(width);
  const upToAt = new Int32Array(width);
  const withRest = new Float64Array(part.rests === null ? 0 : width);
  const withRestAt = new Int32Array(withRest.length);
  const perT = (part.rests?.perU ?? 0) * unit;

  const countInto = (values: readonly number[]): void => {
    best.fill(nothing);
    best[0] = 0;
    taken.fill(0);
    let reach = 0;
    for (let row = 0; row < lots.length; row++) {
      const { place, pieces, sizeT } = lots[row] as Lot;
      const worth = (values[place] ?? 0) * pieces;
      if (worth <= 0) continue;
      const offset = row * width;
      reach = Math.min(columns, reach + sizeT);
      for (let at = reach; at >= sizeT; at--) {
        const withLot = (best[at - sizeT] as number) + worth;
        if (withLot > (best[at] as number) + 1e-9) {
          best[at] = withLot;
          taken[offset + at] = 1;
        }
      }
    }
    runningBest(best, upTo, upToAt, 0);
    if (withRest.length > 0) runningBest(best, withRest, withRestAt, perT);
  };

  /** The best that a room of any length can hold, its rest counted where it is worth something. */
  const inRoom = (roomU: number, bought: boolean): { value: number; at: number } => {
    const full = toTable(roomU);
    const plain = {
      value: upTo[Math.min(full, columns)] ?? 0,
      at: upToAt[Math.min(full, columns)] ?? 0,
    };
    const { rests, kerfU } = part;
    if (rests === null || !bought) return plain;
    const mostT = toTable(roomU - kerfU - rests.fromU);
    if (mostT < 0) return plain;
    const value = (withRest[mostT] ?? 0) + (roomU - kerfU) * rests.perU;
    return value > plain.value ? { value, at: withRestAt[mostT] ?? 0 } : plain;
  };

  /** The best of all ways to part a board in two: one part used up, or as long as it may be. */
  const inParts = ({ capacityU, partsU, bought }: CutKind) => {
    const [firstMost, secondMost] = partsU ?? [capacityU, 0];
    const [shortest, longestFirst] = [Math.max(0, capacityU - secondMost), firstMost];
    let found = { value: nothing, first: 0, second: 0 };
    const look = (firstU: number): void => {
      if (firstU < shortest || firstU > longestFirst) return;
      const first = inRoom(firstU, bought);
      const second = inRoom(capacityU - firstU, bought);
      const value = first.value + second.value;
      if (value > found.value) found = { value, first: first.at, second: second.at };
    };
    look(shortest);
    look(longestFirst);
    for (let at = Math.ceil(shortest / unit); at * unit <= longestFirst; at++) {
      look(at * unit);
      if (part.rests !== null) look(capacityU - at * unit);
    }
    return found;
  };

  const addCounts = (counts: number[], from: number): void => {
    let at = from;
    for (let row = lots.length - 1; row >= 0; row--) {
      if (taken[row * width + at] !== 1) continue;
      const lot = lots[row] as Lot;
      counts[lot.place] = (counts[lot.place] ?? 0) + lot.pieces;
      at -= lot.sizeT;
    }
  };

  const fill = (values: readonly number[]): Fillings => {
    countInto(values);
    return {
      worthOf(index) {
        const kind = part.kinds[index] as CutKind;
        return kind.partsU === null
          ? inRoom(kind.capacityU, kind.bought).value
          : inParts(kind).value;
      },
      countsOf(index) {
        const kind = part.kinds[index] as CutKind;
        const counts = sizesU.map(() => 0);
        if (kind.partsU === null) addCounts(counts, inRoom(kind.capacityU, kind.bought).at);
        else {
          const { first, second } = inParts(kind);
          addCounts(counts, first);
          addCounts(counts, second);
        }
        if (part.rests === null && kind.partsU === null) fillUp(counts, kind.capacityU);
        return counts;
      },
    };
  };

  /** Pieces that are worth nothing now fill what is left: the pattern may serve later. */
  const fillUp = (counts: number[], capacityU: number): void => {
    let leftU = capacityU - filledU(counts, sizesU);
    for (const [i, sizeU] of sizesU.entries()) {
      const demand = part.classes[i]?.demand ?? 0;
      while ((counts[i] ?? 0) < demand && sizeU <= leftU) {
        counts[i] = (counts[i] ?? 0) + 1;
        leftU -= sizeU;
      }
    }
  };

  return { fill, cells: Math.max(1, taken.length) };
}

/** For every length the best of all shorter ones, with so much taken off for each step of length. */
function runningBest(
  best: Float64Array,
  into: Float64Array,
  places: Int32Array,
  perStep: number,
): void {
  let value = nothing;
  let place = 0;
  for (let at = 0; at < best.length; at++) {
    const here = (best[at] as number) - perStep * at;
    if (here > value) {
      value = here;
      place = at;
    }
    into[at] = value;
    places[at] = place;
  }
}

/** What a pattern is worth by these values, its rest counted exactly. */
export function patternWorth(
  counts: readonly number[],
  values: readonly number[],
  rest: number,
): number {
  let sum = rest;
  for (let i = 0; i < counts.length; i++) sum += (counts[i] ?? 0) * (values[i] ?? 0);
  return sum;
}
