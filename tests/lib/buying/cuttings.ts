// Every way to cut a board, listed one by one. Lengths are whole units, 1/320 mm: 1/64 in and 1 mm
// are whole numbers of them. Shares nothing with the planner.

const unitsPerMetre = 320_000;

export const unitsOf = (lengthM: number): number => Math.round(lengthM * unitsPerMetre);

/** A kind of piece: what it takes of a board, its saw cut included. */
export interface PieceKind {
  /** As short as it may be cut. */
  readonly leastU: number;
  readonly fullU: number;
  readonly demand: number;
}

/** How many pieces of each kind, and what offcuts they leave that are worth keeping. */
export interface Cutting {
  readonly counts: readonly number[];
  readonly keptU: number;
}

export interface BoardSize {
  /** The length less squaring, and one saw cut that the end saves. */
  readonly roomU: number;
  readonly kerfU: number;
  /** Room of the first and of the second part where the board is cut at the yard, each with a saw cut. */
  readonly parts?: readonly [number, number];
  /** Offcuts at least so long are kept; endless where none is worth anything. */
  readonly keptFromU: number;
  /** Whether offcuts are what pieces cut as short as allowed leave, or at their full length. */
  readonly offcutsOf: "leastU" | "fullU";
}

const takes = (kinds: readonly PieceKind[], counts: readonly number[], of: "leastU" | "fullU") =>
  kinds.reduce((sum, kind, i) => sum + kind[of] * (counts[i] ?? 0), 0);

/** All counts of pieces up to the demand that take no more than the room, none at all among them. */
function countsWithin(kinds: readonly PieceKind[], roomU: number): number[][] {
  return kinds.reduce<number[][]>(
    (found, kind, i) =>
      found.flatMap((counts) => {
        const leftU = roomU - takes(kinds, counts, "leastU");
        const most = Math.min(kind.demand, Math.floor(leftU / kind.leastU));
        return Array.from({ length: most + 1 }, (_, count) => counts.with(i, count));
      }),
    [kinds.map(() => 0)],
  );
}

const worthKeeping = (restU: number, fromU: number): number => (restU >= fromU ? restU : 0);

/** Of a board in one part: what is left after the last cut, as far as it is kept. */
function keptOf(kinds: readonly PieceKind[], counts: readonly number[], size: BoardSize): number {
  const restU = size.roomU - size.kerfU - takes(kinds, counts, size.offcutsOf);
  return worthKeeping(restU, size.keptFromU);
}

/** Of a board in two parts, cut where most is kept: at an end of what fits, or where a rest just counts. */
function keptOfTwo(
  kinds: readonly PieceKind[],
  [first, second]: readonly [readonly number[], readonly number[]],
  { roomU, kerfU, parts, keptFromU, offcutsOf }: BoardSize,
): number {
  const [mostU, otherU] = parts ?? [0, 0];
  const whole = takes(kinds, first, "fullU") + takes(kinds, second, "fullU") <= roomU;
  const fitsWhole =
    whole && takes(kinds, first, "fullU") <= mostU && takes(kinds, second, "fullU") <= otherU;
  const fit = fitsWhole ? offcutsOf : "leastU";
  const from = Math.max(takes(kinds, first, fit), roomU - otherU, kerfU);
  const to = Math.min(mostU, roomU - takes(kinds, second, fit), roomU - kerfU);
  const [aU, bU] = [takes(kinds, first, offcutsOf), takes(kinds, second, offcutsOf)];
  const places = [from, to, aU + kerfU + keptFromU, roomU - bU - kerfU - keptFromU, aU, roomU - bU];
  return places
    .filter((placeU) => placeU >= from && placeU <= to)
    .reduce((best, placeU) => {
      const rests = [placeU - kerfU - aU, roomU - placeU - kerfU - bU];
      const keptU = rests.reduce((sum, restU) => sum + worthKeeping(restU, keptFromU), 0);
      return Math.max(best, keptU);
    }, 0);
}

/** All cuttings with one piece or more, each once; of those alike the one that keeps most. */
export function cuttingsOf(kinds: readonly PieceKind[], size: BoardSize): Cutting[] {
  const found = new Map<string, Cutting & { readonly isWhole: boolean }>();
  // Pieces are cut short only where they don't fit at their full length.
  const add = (counts: readonly number[], keptU: number, isWhole = true) => {
    const before = found.get(counts.join());
    const isMore =
      before === undefined ||
      (isWhole && !before.isWhole) ||
      (isWhole === before.isWhole && keptU > before.keptU);
    if (!counts.some((count) => count > 0) || !isMore) return;
    found.set(counts.join(), { counts, keptU, isWhole });
  };
  const { parts, roomU } = size;
  if (parts === undefined) {
    for (const counts of countsWithin(kinds, roomU)) add(counts, keptOf(kinds, counts, size));
    return [...found.values()];
  }
  const [mostU, otherU] = parts;
  // Even without pieces, both parts go on the car.
  if (mostU + otherU < roomU) return [];
  for (const first of countsWithin(kinds, Math.min(roomU, mostU))) {
    const usedU = takes(kinds, first, "leastU");
    const left = kinds.map((kind, i) => ({ ...kind, demand: kind.demand - (first[i] ?? 0) }));
    for (const second of countsWithin(left, Math.min(otherU, roomU - usedU))) {
      const counts = first.map((count, i) => count + (second[i] ?? 0));
      const [firstU, secondU] = [takes(kinds, first, "fullU"), takes(kinds, second, "fullU")];
      const isWhole = firstU <= mostU && secondU <= otherU && firstU + secondU <= roomU;
      add(counts, keptOfTwo(kinds, [first, second], size), isWhole || size.offcutsOf === "leastU");
    }
  }
  return [...found.values()];
}

/** Those to which no other adds a piece; enough where pieces too many do no harm. */
export function maximal(cuttings: readonly Cutting[]): Cutting[] {
  const known = new Set(cuttings.map(({ counts }) => counts.join()));
  return cuttings.filter(
    ({ counts }) => !counts.some((count, i) => known.has(counts.with(i, count + 1).join())),
  );
}
