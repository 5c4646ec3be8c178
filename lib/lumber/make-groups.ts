import type { CutKind, CutPart, RestWorth } from "../cutting/cut-part.ts";
import { grainsPerMinor, isPlain } from "../cutting/cut-part.ts";
import { minorDigits } from "../measure/index.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { ChosenTimbers } from "./choose-timber.ts";
import type { Piece } from "./piece.ts";
import type { Section } from "./section.ts";
import { sawStep, unitsDown, unitsPerMetre, unitsUp } from "./whole-units.ts";

/** A cut at 45 degrees is longer by the square root of 2; the trade says 1.41. */
export const mitreFactor = 1.41;

/** Pieces of one length and one kind of cut. Sizes include the saw cut that parts them from the next. */
export interface PieceClass {
  /** Full length and saw cut. */
  readonly sizeU: number;
  /** Length less the shortfall allowed, and saw cut. */
  readonly leastU: number;
  readonly demand: number;
  /** Where its pieces stand in the problem. */
  readonly entries: readonly number[];
  readonly mitred: boolean;
}

/** Boards of one length, price and way to be fetched. */
export interface BoardKind extends CutKind {
  /** Where its boards stand in the problem. */
  readonly stock: readonly number[];
}

/** What can be planned apart from the rest: the pieces and boards of one section and timber. */
export interface CuttingGroup {
  readonly section: Section;
  /** Empty where neither pieces nor boards name one. */
  readonly timber: string;
  /** Largest first. */
  readonly classes: readonly PieceClass[];
  /** Bought before kept, longest first. */
  readonly kinds: readonly BoardKind[];
  /** The same in plain numbers, as the planner takes it. */
  readonly part: CutPart;
  readonly kerfU: number;
  /** What a mitred cut takes. */
  readonly mitreKerfU: number;
  readonly shortfallU: number;
  readonly squaringU: number;
  /** Lengths are shortened by multiples of this. */
  readonly stepU: number;
}

/** Boards that may be used now. */
export interface Offer {
  /** Their row in the problem's stock. */
  readonly row: number;
  /** What one costs, in grains of a minor unit. */
  readonly grains: number;
  /** How long a part the car takes where they are cut at the yard; null where they are left whole. */
  readonly partM: number | null;
}

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

const unlimited = Number.POSITIVE_INFINITY;

interface KindSizes {
  readonly extraU: number;
  readonly squaringU: number;
  readonly shortestU: number;
  /** Whether a longer board may stand in for a shorter one, heavier as it is, and another yard's. */
  readonly freely: boolean;
}

/** Whether a board goes on the car in two parts. */
function goesInTwo({ capacityU, partsU }: BoardKind): boolean {
  return partsU === null || (partsU[0] > 0 && partsU[0] + partsU[1] >= capacityU);
}

function kindOf(problem: BoardProblem, offer: Offer, sizes: KindSizes): BoardKind | undefined {
  const board = problem.stock[offer.row];
  if (!board) return undefined;
  const { extraU, squaringU } = sizes;
  const kept = board.yard === null;
  const usableU = unitsDown(board.length.si) - squaringU;
  const partU = offer.partM === null ? null : unitsDown(offer.partM);
  const { limit = kept ? 1 : unlimited, from = 1, step = 1 } = board;
  return {
    capacityU: usableU + extraU,
    partsU: partU === null ? null : [partU - squaringU + extraU, partU + extraU],
    cost: kept ? 0 : offer.grains,
    supply: kept ? limit : Math.floor(limit / step) * step,
    from: kept ? 1 : from,
    least: 0,
    step: kept ? 1 : step,
    bought: !kept,
    stock: [offer.row],
  };
}

/** Boards of one length and price as one kind; a board that another replaces at no more cost is left out. */
function kindsOf(problem: BoardProblem, offers: readonly Offer[], sizes: KindSizes): BoardKind[] {
  const found = new Map<string, BoardKind>();
  for (const offer of offers) {
    const kind = kindOf(problem, offer, sizes);
    if (!kind || kind.supply < 1 || kind.capacityU < sizes.shortestU || !goesInTwo(kind)) continue;
    const { capacityU, partsU, cost, bought, supply, stock } = kind;
    const same = Number.isFinite(supply) && isPlain(kind);
    const yard = sizes.freely ? "" : problem.stock[offer.row]?.yard;
    const alike = same ? `${capacityU} ${partsU?.join() ?? ""} ${cost} ${bought} ${yard}` : "";
    const key = alike === "" ? `row ${offer.row}` : alike;
    const before = found.get(key);
    found.set(key, {
      ...kind,
      supply: (before?.supply ?? 0) + supply,
      stock: [...(before?.stock ?? []), ...stock],
    });
  }
  const kinds = [...found.values()];
  const yardOf = (kind: BoardKind) => problem.stock[kind.stock[0] ?? 0]?.yard;
  const replaces = (other: BoardKind, kind: BoardKind) =>
    (sizes.freely || (yardOf(other) === yardOf(kind) && other.capacityU === kind.capacityU)) &&
    other.supply === unlimited &&
    isPlain(other) &&
    other.partsU === null &&
    kind.bought &&
    other.capacityU >= kind.capacityU &&
    other.cost <= kind.cost &&
    (other.capacityU > kind.capacityU ||
      other.cost < kind.cost ||
      kind.supply !== unlimited ||
      !isPlain(kind) ||
      kind.partsU !== null ||
      (other.stock[0] ?? 0) < (kind.stock[0] ?? 0));
  // With rests worth something a shorter board may be the better one at the same price, never worse.
  return kinds
    .filter((kind) => !kinds.some((other) => other !== kind && replaces(other, kind)))
    .sort(
      (a, b) => Number(b.bought) - Number(a.bought) || b.capacityU - a.capacityU || a.cost - b.cost,
    );
}

/** What rests are worth, in grains for each unit of length. */
function restsOf(problem: BoardProblem): RestWorth | null {
  const { offcuts } = problem;
  if (offcuts === undefined || offcuts.worth.si <= 0) return null;
  const minor = 10 ** minorDigits(currencyOf(problem));
  return {
    fromU: unitsUp(offcuts.from.si),
    perU: (offcuts.worth.si * minor * grainsPerMinor) / unitsPerMetre,
  };
}

export function currencyOf(problem: BoardProblem): string | undefined {
  return problem.stock.find((board) => board.price.currency !== undefined)?.price.currency;
}

function groupOf(
  problem: BoardProblem,
  timbers: ChosenTimbers,
  of: { section: string; timber: string; offers: readonly Offer[]; freely: boolean },
): CuttingGroup | undefined {
  const { section, timber, freely } = of;
  const pieces = problem.pieces.flatMap((piece, entry) =>
    piece.section.name === section && timbers.pieces[entry] === timber ? [{ piece, entry }] : [],
  );
  const offers = of.offers.filter(
    ({ row }) => problem.stock[row]?.section.name === section && timbers.stock[row] === timber,
  );
  const first = pieces.find(({ piece }) => piece.count > 0);
  if (!first) return undefined;
  const kerfU = unitsUp(problem.kerf.si);
  const shortfallU = unitsDown(problem.shortfall.si);
  const squaringU = unitsUp(problem.squaring?.si ?? 0);
  const lengthsU = [
    ...pieces.map(({ piece }) => unitsUp(piece.length.si)),
    ...offers.map(({ row }) => unitsDown(problem.stock[row]?.length.si ?? 0)),
    ...[kerfU, shortfallU, squaringU],
  ];
  const stepU = sawStep(lengthsU);
  const mitreKerfU = Math.ceil((mitreFactor * kerfU) / stepU - 1e-9) * stepU;
  const classes = classesOf(pieces, { kerfU, mitreKerfU, shortfallU });
  // Where square and mitred pieces share a board, the board counts with the narrower cut: on the safe
  // side by 0.41 kerf at most. So it does where offcuts are worth something, as a floor has one cut,
  // and where the yard cuts boards, which it does square.
  const rests = restsOf(problem);
  const oneCut = rests !== null || problem.cutAtYard === true;
  const extraU = !oneCut && classes.every((each) => each.mitred) ? mitreKerfU : kerfU;
  const shortestU = Math.min(...classes.map((each) => each.leastU));
  const kinds = kindsOf(problem, offers, { extraU, squaringU, shortestU, freely });
  const part: CutPart = {
    classes: classes.map(({ leastU, sizeU, demand }) => ({ leastU, fullU: sizeU, demand })),
    kinds,
    kerfU: extraU,
    rests,
  };
  const sizes = { kerfU, mitreKerfU, shortfallU, squaringU, stepU };
  return { section: first.piece.section, timber, classes, kinds, part, ...sizes };
}

/**
 * The problem taken apart by section and timber; groups come narrow boards first, as on a rack.
 * `freely` says that a board may be replaced by any that is no shorter and costs no more; not where
 * weight and yard count as well.
 */
export function makeGroups(
  problem: BoardProblem,
  timbers: ChosenTimbers,
  offers: readonly Offer[],
  freely = true,
): CuttingGroup[] {
  const names = new Map<string, { section: Section; timber: string }>();
  for (const [i, { section }] of problem.pieces.entries()) {
    const timber = timbers.pieces[i] ?? "";
    names.set(`${section.name} ${timber}`, { section, timber });
  }
  return [...names.entries()].sort(narrowFirst).flatMap(([, { section, timber }]) => {
    const group = groupOf(problem, timbers, { section: section.name, timber, offers, freely });
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
