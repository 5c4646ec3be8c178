import {
  type CutPart,
  endless,
  fullSizes,
  isEndless,
  isPlain,
  type Pattern,
  type PatternUse,
} from "./cut-part.ts";
import { cheapest, gathered } from "./pattern-cost.ts";

interface OpenBoard {
  kind: number;
  /** What is left of each part of the board; one number where it is left whole. */
  readonly restsU: number[];
  readonly counts: number[];
}

function roomsOf({ capacityU, partsU }: CutPart["kinds"][number]): number[] {
  if (partsU === null) return [capacityU];
  const first = Math.min(partsU[0], capacityU);
  return [first, Math.min(partsU[1], capacityU - first)];
}

function put(board: OpenBoard, place: number, sizeU: number): boolean {
  const at = board.restsU.findIndex((restU) => restU >= sizeU);
  if (at < 0) return false;
  board.restsU[at] = (board.restsU[at] as number) - sizeU;
  board.counts[place] = (board.counts[place] ?? 0) + 1;
  return true;
}

/** Each board changed to the cheapest that still holds what lies on it. */
function shrink(part: CutPart, boards: readonly OpenBoard[]): void {
  for (const board of boards) {
    const now = part.kinds[board.kind];
    if (!now?.bought || now.partsU !== null) continue;
    const used = now.capacityU - (board.restsU[0] ?? 0);
    part.kinds.forEach((kind, i) => {
      const current = part.kinds[board.kind];
      if (!current || !kind.bought || !isEndless(kind) || !isPlain(kind)) return;
      if (kind.partsU !== null) return;
      if (kind.capacityU >= used && kind.cost < current.cost) board.kind = i;
    });
  }
}

/**
 * The rule people use by hand: longest piece first, each on the first board with room, kept boards
 * before new ones of one length. Gives undefined where that length has no room for a piece.
 */
export function fillOneLength(part: CutPart, buy: number): OpenBoard[] | undefined {
  const sizes = fullSizes(part);
  const open = (kind: number): OpenBoard => ({
    kind,
    restsU: roomsOf(part.kinds[kind] as CutPart["kinds"][number]),
    counts: sizes.map(() => 0),
  });
  const boards: OpenBoard[] = part.kinds
    .flatMap((kind, i) => (kind.bought ? [] : Array.from({ length: kind.supply }, () => open(i))))
    .sort((a, b) => (a.restsU[0] ?? 0) - (b.restsU[0] ?? 0));
  const fresh = part.kinds[buy];
  let left = fresh?.supply ?? 0;
  // Boards before this one are too full for the class at hand, and stay so.
  for (const [place, { fullU, demand }] of part.classes.entries()) {
    let from = 0;
    for (let n = 0; n < demand; n++) {
      while (from < boards.length && !put(boards[from] as OpenBoard, place, fullU)) from++;
      if (from < boards.length) continue;
      if (!fresh || left < 1) return undefined;
      const board = open(buy);
      if (!put(board, place, fullU)) return undefined;
      left--;
      boards.push(board);
    }
  }
  return boards.filter((board) => board.counts.some((count) => count > 0));
}

const asPlan = (boards: readonly OpenBoard[]): PatternUse[] =>
  gathered(boards.map(({ kind, counts }): Pattern => ({ kind, counts })));

/** Boards of several lengths, the best filled one first: each time the board that costs least by length used. */
function fillBest(part: CutPart): PatternUse[] | undefined {
  const sizes = fullSizes(part);
  const need = part.classes.map((each) => each.demand);
  const supply = part.kinds.map((kind) => kind.supply);
  const done: Pattern[] = [];
  const pieces = need.reduce((sum, count) => sum + count, 0);
  for (let n = 0; n < pieces && need.some((count) => count > 0); n++) {
    let best: { pattern: Pattern; rate: number } | undefined;
    for (const [k, kind] of part.kinds.entries()) {
      if ((supply[k] ?? 0) < 1) continue;
      const board: OpenBoard = { kind: k, restsU: roomsOf(kind), counts: sizes.map(() => 0) };
      let usedU = 0;
      for (const [i, sizeU] of sizes.entries()) {
        while ((board.counts[i] ?? 0) < (need[i] ?? 0) && put(board, i, sizeU)) usedU += sizeU;
      }
      if (usedU === 0) continue;
      const rate = kind.bought ? kind.cost / usedU : -usedU;
      if (!best || rate < best.rate) best = { pattern: { kind: k, counts: board.counts }, rate };
    }
    if (!best) return undefined;
    const { pattern } = best;
    done.push(pattern);
    supply[pattern.kind] = (supply[pattern.kind] ?? 0) - 1;
    for (const [i, count] of pattern.counts.entries()) need[i] = (need[i] ?? 0) - count;
  }
  return gathered(done);
}

/** The cheapest plan by first fit over all lengths to buy, or undefined where none works. */
export function firstFit(part: CutPart): readonly PatternUse[] | undefined {
  const lengths = part.kinds.flatMap((kind, i) => (kind.bought && kind.supply > 0 ? [i] : []));
  const plans = (lengths.length > 0 ? lengths : [-1]).flatMap((buy) => {
    const boards = fillOneLength(part, buy);
    if (!boards) return [];
    const plain = asPlan(boards);
    shrink(part, boards);
    return [plain, asPlan(boards)];
  });
  const mixed = part.classes.length * part.kinds.length < 3000 ? fillBest(part) : undefined;
  return cheapest(part, mixed ? [...plans, mixed] : plans);
}

/** First fit at one length, as people do it by hand, without a second look; undefined where it fails. */
export function firstFitByHand(part: CutPart): readonly PatternUse[] | undefined {
  const lengths = part.kinds.flatMap((kind, i) =>
    kind.bought && kind.supply === endless && isPlain(kind) ? [i] : [],
  );
  const plans = (lengths.length > 0 ? lengths : [-1]).flatMap((buy) => {
    const boards = fillOneLength(part, buy);
    return boards ? [asPlan(boards)] : [];
  });
  return cheapest(part, plans);
}
