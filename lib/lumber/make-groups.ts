import type { BoardProblem } from "./board-problem.ts";
import type { ChosenTimbers } from "./choose-timber.ts";
import type { BoardKind, CuttingGroup, PieceClass } from "./cutting-group.ts";
import type { Piece } from "./piece.ts";
import type { Section } from "./section.ts";
import { coinsPerUnit, greatestDivisor, sawStep, unitsDown, unitsUp } from "./whole-units.ts";

/** A cut at 45 degrees is longer by the square root of 2; the trade says 1.41. */
export const mitreFactor = 1.41;

function classesOf(
  pieces: readonly { piece: Piece; entry: number }[],
  { kerfU, mitreKerfU, shortfallU }: { kerfU: number; mitreKerfU: number; shortfallU: number },
): PieceClass[] {
  const found = new Map<string, PieceClass & { entries: number[] }>();
  for (const { piece, entry } of pieces) {
    if (piece.count === 0) continue;
    const mitred = piece.mitred === true;
    const lengthU = unitsUp(piece.length.si);
    const key = `${lengthU} ${mitred}`;
    const own = mitred ? mitreKerfU : kerfU;
    // No allowance may take more than half of a very short piece.
    const leastU = Math.max(lengthU - shortfallU, Math.ceil(lengthU / 2));
    const before = found.get(key);
    found.set(key, {
      sizeU: lengthU + own,
      leastU: leastU + own,
      demand: (before?.demand ?? 0) + piece.count,
      entries: [...(before?.entries ?? []), entry],
      mitred,
    });
  }
  return [...found.values()].sort(
    (a, b) => b.sizeU - a.sizeU || Number(a.mitred) - Number(b.mitred),
  );
}

interface Offer {
  readonly lengthU: number;
  readonly coins: number;
  readonly supply: number;
  readonly kept: boolean;
  readonly row: number;
}

const unlimited = Number.POSITIVE_INFINITY;

/** Boards of one length and price as one kind; a board that another replaces at no more cost is left out. */
function kindsOf(offers: readonly Offer[], extraU: number, shortestU: number): BoardKind[] {
  const found = new Map<string, BoardKind & { stock: number[] }>();
  for (const offer of offers) {
    const endless = offer.supply === unlimited ? `row ${offer.row}` : "limited";
    const key = `${offer.lengthU} ${offer.coins} ${offer.kept} ${endless}`;
    const before = found.get(key);
    found.set(key, {
      lengthU: offer.lengthU,
      capacityU: offer.lengthU + extraU,
      cost: offer.coins,
      supply: (before?.supply ?? 0) + offer.supply,
      kept: offer.kept,
      stock: [...(before?.stock ?? []), offer.row],
    });
  }
  const kinds = [...found.values()].filter(
    (kind) => kind.supply > 0 && kind.capacityU >= shortestU,
  );
  const replaces = (other: BoardKind, kind: BoardKind) =>
    other.supply === unlimited &&
    !kind.kept &&
    other.lengthU >= kind.lengthU &&
    other.cost <= kind.cost &&
    (other.lengthU > kind.lengthU ||
      other.cost < kind.cost ||
      kind.supply !== unlimited ||
      (other.stock[0] ?? 0) < (kind.stock[0] ?? 0));
  return kinds
    .filter((kind) => !kinds.some((other) => other !== kind && replaces(other, kind)))
    .sort((a, b) => Number(a.kept) - Number(b.kept) || b.lengthU - a.lengthU || a.cost - b.cost);
}

/** A group with what is needed to turn its cost back into money. */
export interface PricedGroup extends CuttingGroup {
  /** What one unit of its cost is in money's major unit. */
  readonly coin: number;
  /** What a mitred cut takes. */
  readonly mitreKerfU: number;
}

function groupOf(
  problem: BoardProblem,
  timbers: ChosenTimbers,
  { section, timber }: { section: string; timber: string },
): PricedGroup | undefined {
  const pieces = problem.pieces.flatMap((piece, entry) =>
    piece.section.name === section && timbers.pieces[entry] === timber ? [{ piece, entry }] : [],
  );
  const boards = problem.stock.flatMap((board, row) =>
    board.section.name === section && timbers.stock[row] === timber ? [{ board, row }] : [],
  );
  const first = pieces.find(({ piece }) => piece.count > 0);
  if (!first) return undefined;
  const kerfU = unitsUp(problem.kerf.si);
  const shortfallU = unitsDown(problem.shortfall.si);
  const lengthsU = [
    ...pieces.map(({ piece }) => unitsUp(piece.length.si)),
    ...boards.map(({ board }) => unitsDown(board.length.si)),
    kerfU,
    shortfallU,
  ];
  const stepU = sawStep(lengthsU);
  const mitreKerfU = Math.ceil((mitreFactor * kerfU) / stepU - 1e-9) * stepU;
  const classes = classesOf(pieces, { kerfU, mitreKerfU, shortfallU });
  const coins = coinsPerUnit(boards.map(({ board }) => board.price.si));
  const prices = boards.map(({ board }) =>
    board.yard === null ? 0 : Math.round(board.price.si * coins),
  );
  const divisor = prices.reduce(greatestDivisor, 0) || 1;
  // Where square and mitred pieces share a board, the board counts with the narrower cut: on the safe
  // side by 0.41 kerf at most.
  const extraU = classes.every((each) => each.mitred) ? mitreKerfU : kerfU;
  const offers = boards.map(({ board, row }, i): Offer => {
    const kept = board.yard === null;
    return {
      lengthU: unitsDown(board.length.si),
      coins: (prices[i] ?? 0) / divisor,
      supply: board.limit ?? (kept ? 1 : unlimited),
      kept,
      row,
    };
  });
  const shortestU = Math.min(...classes.map((each) => each.leastU));
  return {
    section: first.piece.section,
    timber,
    classes,
    kinds: kindsOf(offers, extraU, shortestU),
    kerfU,
    mitreKerfU,
    shortfallU,
    stepU,
    coin: divisor / coins,
  };
}

/** The problem taken apart by section and timber; groups come narrow boards first, as on a rack. */
export function makeGroups(problem: BoardProblem, timbers: ChosenTimbers): PricedGroup[] {
  const names = new Map<string, { section: Section; timber: string }>();
  for (const [i, { section }] of problem.pieces.entries()) {
    const timber = timbers.pieces[i] ?? "";
    names.set(`${section.name} ${timber}`, { section, timber });
  }
  return [...names.entries()].sort(narrowFirst).flatMap(([, { section, timber }]) => {
    const group = groupOf(problem, timbers, { section: section.name, timber });
    return group ? [group] : [];
  });
}

type Named = readonly [name: string, of: { readonly section: Section }];

function narrowFirst([name, { section: a }]: Named, [other, { section: b }]: Named): number {
  return (
    a.width.si - b.width.si ||
    a.thickness.si - b.thickness.si ||
    Number(name > other) - Number(name < other)
  );
}
