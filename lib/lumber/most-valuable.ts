import type { Certificate, PieceValue } from "./certificate.ts";

// A certificate is checked by an integer table of its own: nothing here uses the planner's code.
const unitsPerMetre = 320_000;
const none = Number.NEGATIVE_INFINITY;

export const wholeUnits = (lengthM: number): number => Math.round(lengthM * unitsPerMetre);

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}

/** What offcuts are worth, in whole units of length and hundred-thousandths of the minor unit. */
export interface RestsKept {
  readonly kerfU: number;
  readonly fromU: number;
  readonly perU: number;
}

export interface Room {
  readonly roomU: number;
  /** Of each part of a board cut in two; null where it is left whole. */
  readonly partU: number | null;
  /** Null for boards whose offcuts are worth nothing. */
  readonly rests: RestsKept | null;
}

/** The most valuable filling for every length, of pieces of one section and timber. */
export class ValueTable {
  readonly #unit: number;
  /** The most that pieces taking just so much are worth; and taking no more than so much. */
  readonly #just: Float64Array;
  readonly #upTo: Float64Array;

  constructor(
    pieces: readonly Pick<PieceValue, "takes" | "count">[],
    values: readonly number[],
    longestU: number,
  ) {
    const sizes = pieces.map(({ takes }) => wholeUnits(takes.si));
    this.#unit = sizes.reduce(greatestDivisor, 0) || 1;
    const columns = Math.max(0, Math.floor(longestU / this.#unit));
    this.#just = new Float64Array(columns + 1).fill(none);
    this.#just[0] = 0;
    for (const [i, { count }] of pieces.entries()) {
      const size = (sizes[i] ?? 0) / this.#unit;
      this.#add(size, {
        value: values[i] ?? 0,
        count: Math.min(count, Math.floor(columns / size)),
      });
    }
    this.#upTo = highestSoFar(this.#just, 0);
  }

  /** Lots of 1, 2, 4, … make every count up to the whole. */
  #add(size: number, { value, count }: { readonly value: number; readonly count: number }): void {
    for (let left = count, lot = 1; left > 0; left -= lot, lot *= 2) {
      const taken = Math.min(lot, left);
      for (let at = this.#just.length - 1; at >= taken * size; at--) {
        const before = this.#just[at - taken * size] ?? none;
        const here = this.#just[at] ?? none;
        if (before + taken * value > here) this.#just[at] = before + taken * value;
      }
    }
  }

  /** The most that can be made of one board, its offcuts included. */
  worth({ roomU, partU, rests }: Room): number {
    const kept = rests && highestSoFar(this.#just, rests.perU * this.#unit);
    const inOne = (oneU: number): number => {
      const plain = this.#upTo[Math.floor(oneU / this.#unit)] ?? 0;
      if (rests === null || kept === null) return plain;
      const filledU = oneU - rests.kerfU - rests.fromU;
      if (filledU < 0) return plain;
      const filled = kept[Math.floor(filledU / this.#unit)] ?? 0;
      return Math.max(plain, filled + (oneU - rests.kerfU) * rests.perU);
    };
    if (partU === null) return inOne(roomU);
    let best = 0;
    this.#partings(roomU, { partU, rests }, (firstU) => {
      best = Math.max(best, inOne(firstU) + inOne(roomU - firstU));
    });
    return best;
  }

  /**
   * Looks at every place where the first part may end so that one of the parts is just filled, or its
   * rest just long enough to keep: between these places nothing changes for the better.
   */
  #partings(
    roomU: number,
    { partU, rests }: { readonly partU: number; readonly rests: RestsKept | null },
    look: (firstU: number) => void,
  ): void {
    const [from, to] = [Math.max(0, roomU - partU), Math.min(partU, roomU)];
    const lookIf = (placeU: number): void => {
      if (placeU >= from && placeU <= to) look(placeU);
    };
    lookIf(from);
    lookIf(to);
    for (let at = 0; at < this.#just.length; at++) {
      if (this.#just[at] === none) continue;
      const filledU = at * this.#unit;
      lookIf(filledU);
      lookIf(roomU - filledU);
      if (rests === null) continue;
      lookIf(filledU + rests.kerfU + rests.fromU);
      lookIf(roomU - filledU - rests.kerfU - rests.fromU);
    }
  }
}

/** For every length the best of all shorter ones, so much taken off for each step of length. */
function highestSoFar(just: Float64Array, perStep: number): Float64Array {
  const highest = new Float64Array(just.length);
  let best = none;
  for (let at = 0; at < just.length; at++) {
    best = Math.max(best, (just[at] ?? none) - perStep * at);
    highest[at] = best;
  }
  return highest;
}

/** The table of each section and timber, long enough for all its boards; the values in the order of the pieces. */
export function valueTables(
  { pieces, boards }: Pick<Certificate, "pieces" | "boards">,
  values: readonly number[],
): ReadonlyMap<string, ValueTable> {
  const tables = new Map<string, ValueTable>();
  for (const { section, timber } of boards) {
    const name = groupOf({ section, timber });
    if (tables.has(name)) continue;
    const own = pieces.flatMap((piece, at) => (groupOf(piece) === name ? [{ piece, at }] : []));
    const rooms = boards.filter((board) => groupOf(board) === name).map(({ room }) => room.si);
    const ofOwn = own.map(({ at }) => values[at] ?? 0);
    const longestU = wholeUnits(Math.max(0, ...rooms));
    const table = new ValueTable(
      own.map(({ piece }) => piece),
      ofOwn,
      longestU,
    );
    tables.set(name, table);
  }
  return tables;
}

export function groupOf({ section, timber }: Pick<PieceValue, "section" | "timber">): string {
  return JSON.stringify([section, timber]);
}
