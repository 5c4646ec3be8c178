import { indexPrices } from "../../../lib/cost/price-index.ts";
import type { BuyingProblem, Piece, StockBoard, Way, YardTerms } from "../../../lib/index.ts";
import { type Cutting, cuttingsOf, maximal, type PieceKind, unitsOf } from "./cuttings.ts";

// What can be had where, and how: the parts of the whole formulation. Money in cents, mass in kg.

const groupName = ({ section, timber }: Pick<Piece, "section" | "timber">) =>
  `${section.name} ${timber ?? ""}`;

/** The pieces of each section and timber. */
export function groupsOf({ boards }: BuyingProblem): Map<string, readonly Piece[]> {
  const groups = new Map<string, Piece[]>();
  for (const piece of boards.pieces) {
    const name = groupName(piece);
    groups.set(name, [...(groups.get(name) ?? []), piece]);
  }
  return groups;
}

/** A line of boards as it can be had in one way, with every way to cut one. */
export interface BoardOffer {
  readonly row: number;
  readonly group: string;
  /** Null for boards kept. */
  readonly yard: string | null;
  readonly way: Way;
  readonly cents: number;
  readonly massKg: number;
  readonly most: number;
  readonly from: number;
  readonly step: number;
  readonly cuttings: readonly Cutting[];
}

/** A need as it can be bought at one yard in one way. */
export interface GoodsOffer {
  readonly need: number;
  readonly yard: string;
  readonly way: Way;
  readonly cents: number;
  readonly massKg: number;
}

export interface Reading {
  readonly offcutsOf: "leastU" | "fullU";
}

/** A cut at 45 degrees is 1.41 times as wide, up to the next 1/16 in. */
function mitreU(kerfM: number): number {
  const sixteenthU = unitsOf(0.0254 / 16);
  return Math.ceil((1.41 * unitsOf(kerfM)) / sixteenthU - 1e-9) * sixteenthU;
}

/** Pieces of one length and cut are one kind. */
export function kindsOf(pieces: readonly Piece[], { boards }: BuyingProblem): PieceKind[] {
  const kerfU = unitsOf(boards.kerf.si);
  const found = new Map<string, PieceKind>();
  for (const { length, count, mitred = false } of pieces) {
    const lengthU = unitsOf(length.si);
    const shortU = Math.max(lengthU - unitsOf(boards.shortfall.si), Math.ceil(lengthU / 2));
    const cutU = mitred ? mitreU(boards.kerf.si) : kerfU;
    const key = `${lengthU} ${mitred}`;
    const demand = count + (found.get(key)?.demand ?? 0);
    found.set(key, { leastU: shortU + cutU, fullU: lengthU + cutU, demand });
  }
  return [...found.values()].filter(({ demand }) => demand > 0);
}

/**
 * The saw cut that a board's end saves: the wide one where all pieces are mitred, no offcut counts
 * and no yard cuts.
 */
function endCutU(pieces: readonly Piece[], { boards }: BuyingProblem): number {
  const isAllMitred = pieces.every(({ mitred, count }) => mitred === true || count === 0);
  const oneCut = boards.offcuts !== undefined || boards.cutAtYard === true;
  return isAllMitred && !oneCut ? mitreU(boards.kerf.si) : unitsOf(boards.kerf.si);
}

function cuttingsIn(
  way: Way,
  board: StockBoard,
  given: { readonly pieces: readonly Piece[]; readonly problem: BuyingProblem } & Reading,
): readonly Cutting[] {
  const { boards } = given.problem;
  const kinds = kindsOf(given.pieces, given.problem);
  const endU = endCutU(given.pieces, given.problem);
  const squaredU = unitsOf(boards.squaring?.si ?? 0);
  const loadU = boards.loadLength === undefined ? Infinity : unitsOf(boards.loadLength.si);
  const isLong = board.yard !== null && way === "fetched" && unitsOf(board.length.si) > loadU;
  if (isLong && boards.cutAtYard !== true) return [];
  const keeps = board.yard !== null && boards.offcuts !== undefined;
  const worthAnything = boards.offcuts !== undefined;
  const all = cuttingsOf(kinds, {
    roomU: unitsOf(board.length.si) - squaredU + endU,
    kerfU: endU,
    keptFromU: keeps ? unitsOf(boards.offcuts?.from.si ?? 0) : Infinity,
    offcutsOf: given.offcutsOf,
    ...(isLong ? { parts: [loadU - squaredU + endU, loadU + endU] as const } : {}),
  });
  return worthAnything ? all : maximal(all);
}

const waysOf = ({ delivery }: YardTerms): Way[] =>
  delivery === undefined ? ["fetched"] : ["fetched", "delivered"];

/** Every line of boards in every way it can be had. */
export function boardOffers(problem: BuyingProblem, reading: Reading): BoardOffer[] {
  const { boards, yards, woodDensity } = problem;
  const groups = groupsOf(problem);
  return boards.stock.flatMap((board, row) => {
    const group = groupName(board);
    const pieces = groups.get(group) ?? [];
    const { section, length, price, limit, from = 1, step = 1 } = board;
    const terms = yards.find(({ yard }) => yard === board.yard);
    const ways: Way[] = terms === undefined ? ["fetched"] : waysOf(terms);
    const volumeM3 = section.thickness.si * section.width.si * length.si;
    return ways.map((way) => ({
      row,
      group,
      yard: board.yard,
      way,
      cents: Math.round(price.si * 100),
      massKg: board.yard === null ? 0 : volumeM3 * (woodDensity?.si ?? 0),
      most: limit ?? (board.yard === null ? 1 : Infinity),
      from,
      step,
      cuttings: cuttingsIn(way, board, { pieces, problem, ...reading }),
    }));
  });
}

/** Every need at every yard in every way it can be had there. */
export function goodsOffers(problem: BuyingProblem): GoodsOffer[] {
  const index = indexPrices(problem.prices);
  return problem.needs.flatMap((need, at) =>
    problem.yards.flatMap((terms) =>
      waysOf(terms).flatMap((way): GoodsOffer[] => {
        const isBulkHad = problem.carriesBulk || way === "delivered";
        const purchase = index.purchase(need, terms.yard, isBulkHad);
        if (purchase === undefined) return [];
        const density = need.kind === "volume" ? need.density?.likely.si : undefined;
        const massKg = purchase.parts.reduce((sum, { line, count }) => {
          if (line.kind !== "goods" || need.kind !== "volume") return sum;
          if (line.size.kind === "mass") return sum + line.size.mass.si * count;
          const volumeM3 = line.size.kind === "volume" ? line.size.volume.si : 0;
          return sum + volumeM3 * count * (density ?? 0);
        }, 0);
        return [{ need: at, yard: terms.yard, way, cents: purchase.cents, massKg }];
      }),
    ),
  );
}
