import { type Length, quantity } from "../measure/index.ts";
import type { SplicedPiece } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { ChosenTimbers } from "./choose-timber.ts";
import type { Piece } from "./piece.ts";

const hairM = 1e-6;

/** The problem with the pieces that are too long for every board joined of parts. */
export interface Spliced {
  readonly problem: BoardProblem;
  readonly timbers: ChosenTimbers;
  readonly spliced: readonly SplicedPiece[];
}

const lengthOf = (lengthM: number): Length => quantity(lengthM, [1, 0, 0, 0, 0]);

/** Whether a yard's boards can only come in the car. */
type OnlyByCar = (yard: string) => boolean;

/** The longest piece that the boards on sale or kept can give, by section and timber. */
function longestM(
  problem: BoardProblem,
  timbers: ChosenTimbers,
  { entry, onlyByCar }: { readonly entry: number; readonly onlyByCar: OnlyByCar },
): number {
  const piece = problem.pieces[entry];
  const { loadLength, cutAtYard = false, squaring } = problem;
  const lengths = problem.stock.flatMap((board, row) => {
    const same =
      board.section.name === piece?.section.name && timbers.stock[row] === timbers.pieces[entry];
    if (!same) return [];
    const whole = board.length.si - (squaring?.si ?? 0);
    if (board.yard === null || loadLength === undefined || !onlyByCar(board.yard)) return [whole];
    if (board.length.si <= loadLength.si + hairM) return [whole];
    return cutAtYard && board.length.si <= 2 * loadLength.si ? [loadLength.si] : [];
  });
  return Math.max(0, ...lengths);
}

/** Ways to part a length at some of these places into the fewest parts, none longer than so much. */
function partsAt(lengthM: number, places: readonly number[], mostM: number): number[] | undefined {
  const stops = [...places.filter((at) => at > hairM && at < lengthM - hairM), lengthM].sort(
    (a, b) => a - b,
  );
  interface Way {
    readonly parts: readonly number[];
    readonly longest: number;
  }
  const best = new Map<number, Way>([[0, { parts: [], longest: 0 }]]);
  const better = (a: Way, b: Way | undefined) =>
    b === undefined ||
    a.parts.length < b.parts.length ||
    (a.parts.length === b.parts.length && a.longest < b.longest - hairM);
  const froms = [0, ...stops];
  for (const from of froms) {
    const before = best.get(from);
    if (!before) continue;
    for (const to of stops) {
      const own = to - from;
      if (own <= hairM || own > mostM + hairM) continue;
      const way = { parts: [...before.parts, own], longest: Math.max(before.longest, own) };
      if (better(way, best.get(to))) best.set(to, way);
    }
  }
  const found = best.get(lengthM)?.parts;
  return found && [...found];
}

function equalParts(lengthM: number, mostM: number): number[] | undefined {
  if (mostM <= hairM) return undefined;
  const count = Math.ceil((lengthM - hairM) / mostM);
  return count > 50 ? undefined : Array.from({ length: count }, () => lengthM / count);
}

const joinable: ReadonlySet<Piece["part"]> = new Set(["side", "end", "other"]);

/**
 * Pieces longer than every board as parts to be joined over stakes: the fewest parts there can be,
 * and of these the most even. Where the stakes are not known the parts are equal, and a stake is to
 * be set at each joint. Seats and stakes are not joined.
 */
export function splicePieces(
  problem: BoardProblem,
  timbers: ChosenTimbers,
  onlyByCar: OnlyByCar = () => true,
): Spliced {
  if (problem.splice !== true) return { problem, timbers, spliced: [] };
  const pieces: Piece[] = [];
  const chosen: string[] = [];
  const spliced: SplicedPiece[] = [];
  for (const [entry, piece] of problem.pieces.entries()) {
    const timber = timbers.pieces[entry] ?? "";
    const mostM = longestM(problem, timbers, { entry, onlyByCar });
    const { length, stakesAt } = piece;
    const isLong = length.si - problem.shortfall.si > mostM + hairM;
    const parts =
      !isLong || !joinable.has(piece.part) || piece.mitred === true
        ? undefined
        : stakesAt === undefined
          ? equalParts(length.si, mostM)
          : partsAt(
              length.si,
              stakesAt.map((at) => at.si),
              mostM,
            );
    if (parts === undefined || piece.count === 0) {
      pieces.push(piece);
      chosen.push(timber);
      continue;
    }
    for (const [n, partM] of parts.entries()) {
      const name = `${piece.name}, part ${n + 1} of ${parts.length}`;
      pieces.push({ ...piece, name, length: lengthOf(partM) });
      chosen.push(timber);
    }
    const { name, bed, count } = piece;
    const own = { name, bed, count, asked: length, parts: parts.map(lengthOf) };
    spliced.push({ ...own, onStakes: stakesAt !== undefined });
  }
  return {
    problem: { ...problem, pieces },
    timbers: { ...timbers, pieces: chosen },
    spliced,
  };
}
