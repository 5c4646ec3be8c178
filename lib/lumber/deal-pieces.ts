import type { BoardProblem } from "./board-problem.ts";
import type { CuttingGroup } from "./make-groups.ts";

/** A piece on a board: its class, and its place in the problem. */
export interface LaidPiece {
  readonly place: number;
  readonly entry: number;
}

/** What a bed still needs: entries of each class, one for each piece. */
type Wanted = Map<number, number[]>;

/**
 * Deals out the pieces of a plan board after board. Pieces of one length may change places, so those
 * of one bed come onto as few boards as can easily be had: each board takes from the bed that fills
 * most of it, the first of the list where several do.
 */
export class PieceDealer {
  readonly #order: readonly number[];
  readonly #beds = new Map<string, Wanted>();

  constructor(group: CuttingGroup, pieces: BoardProblem["pieces"]) {
    // Square pieces before mitred ones, longest first: the rest of the board stays long and square.
    this.#order = group.classes
      .map((each, place) => ({ each, place }))
      .sort((a, b) => Number(a.each.mitred) - Number(b.each.mitred) || a.place - b.place)
      .map(({ place }) => place);
    const inOrder = group.classes
      .flatMap(({ entries }, place) => entries.map((entry) => ({ entry, place })))
      .sort((a, b) => a.entry - b.entry);
    for (const { entry, place } of inOrder) {
      const { bed = "", count = 0 } = pieces[entry] ?? {};
      const wanted = this.#beds.get(bed) ?? new Map<number, number[]>();
      this.#beds.set(bed, wanted);
      const own = wanted.get(place) ?? [];
      wanted.set(place, own);
      for (let n = 0; n < count; n++) own.push(entry);
    }
  }

  /** The pieces of one board (or of one part of it), in the order of cutting. */
  deal(counts: readonly number[]): LaidPiece[] {
    const open = new Map<number, number>();
    for (const place of this.#order) {
      const count = counts[place] ?? 0;
      if (count > 0) open.set(place, count);
    }
    const dealt: LaidPiece[] = [];
    while (open.size > 0) {
      const bed = this.#fullest(open);
      if (bed === undefined) break;
      this.#take(bed, open, dealt);
    }
    const rank = new Map(this.#order.map((place, at) => [place, at]));
    return dealt.sort((a, b) => (rank.get(a.place) ?? 0) - (rank.get(b.place) ?? 0));
  }

  /** The bed that still needs most of what lies on the board. */
  #fullest(open: ReadonlyMap<number, number>): string | undefined {
    let best: string | undefined;
    let most = 0;
    for (const [bed, wanted] of this.#beds) {
      let fits = 0;
      for (const [place, count] of open) fits += Math.min(count, wanted.get(place)?.length ?? 0);
      if (fits > most) [best, most] = [bed, fits];
    }
    return best;
  }

  #take(bed: string, open: Map<number, number>, dealt: LaidPiece[]): void {
    const wanted = this.#beds.get(bed);
    for (const [place, count] of open) {
      const own = wanted?.get(place) ?? [];
      const taken = own.splice(0, count);
      for (const entry of taken) dealt.push({ place, entry });
      if (taken.length === count) open.delete(place);
      else open.set(place, count - taken.length);
      if (own.length === 0) wanted?.delete(place);
    }
    if (wanted?.size === 0) this.#beds.delete(bed);
  }
}
