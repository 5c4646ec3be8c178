import type {
  BuyingProblem,
  IntegerProgram,
  Length,
  ProgramColumn,
  Solve,
} from "../../lib/index.ts";

// The whole order as people first write it down: every pattern of every board a column, one decision
// for each yard, and the solver does the rest. Without tax, needs, deliveries and loads.

const unitsPerMetre = 320_000;
const unitsOf = (length: Length): number => Math.round(length.si * unitsPerMetre);

interface Kind {
  readonly takesU: number;
  readonly demand: number;
}

interface Use {
  readonly section: string;
  readonly kinds: readonly Kind[];
  /** The row of its first kind. */
  readonly row: number;
}

function usesOf({ boards }: BuyingProblem): Use[] {
  const sections = new Set(boards.pieces.map(({ section }) => section.name));
  let row = 0;
  return [...sections].map((section) => {
    const demands = new Map<number, number>();
    for (const piece of boards.pieces) {
      if (piece.section.name !== section) continue;
      const takesU = unitsOf(piece.length) + unitsOf(boards.kerf);
      demands.set(takesU, (demands.get(takesU) ?? 0) + piece.count);
    }
    const kinds = [...demands].map(([takesU, demand]) => ({ takesU, demand }));
    const use = { section, kinds: kinds.sort((a, b) => b.takesU - a.takesU), row };
    row += kinds.length;
    return use;
  });
}

/** All patterns to which no piece can be added; undefined where they are more than so many. */
function patternsWithin(
  kinds: readonly Kind[],
  roomU: number,
  atMost: number,
): number[][] | undefined {
  const found: number[][] = [];
  const counts = kinds.map(() => 0);
  const isFull = (leftU: number) =>
    kinds.every(({ takesU, demand }, i) => takesU > leftU || counts[i] === demand);
  const go = (i: number, leftU: number): void => {
    const kind = kinds[i];
    if (found.length > atMost) return;
    if (kind === undefined) {
      if (isFull(leftU)) found.push([...counts]);
      return;
    }
    const { takesU, demand } = kind;
    for (let count = Math.min(demand, Math.floor(leftU / takesU)); count >= 0; count--) {
      counts[i] = count;
      go(i + 1, leftU - count * takesU);
    }
    counts[i] = 0;
  };
  go(0, roomU);
  return found.length > atMost ? undefined : found;
}

/** The programme, in cents; undefined where it has more columns than so many. */
export function fullFormulation(
  problem: BuyingProblem,
  columnsAtMost: number,
): IntegerProgram | undefined {
  const { boards, yards } = problem;
  const uses = usesOf(problem);
  const rows = uses.flatMap(({ kinds }) =>
    kinds.map(({ demand }) => ({ least: demand, most: Infinity })),
  );
  const allPieces = boards.pieces.reduce((sum, { count }) => sum + count, 0);
  // Nothing from a yard that is not gone to.
  const yardRow = rows.length;
  rows.push(...yards.map(() => ({ least: 0, most: Infinity })));
  const columns: ProgramColumn[] = yards.map(({ tripCost }, at) => ({
    cost: Math.round((tripCost?.si ?? 0) * 100),
    most: 1,
    rows: [yardRow + at],
    amounts: [allPieces],
  }));
  for (const { yard, section, length, price, limit } of boards.stock) {
    const use = uses.find((each) => each.section === section.name);
    if (use === undefined) continue;
    const roomU = unitsOf(length) + unitsOf(boards.kerf);
    const patterns = patternsWithin(use.kinds, roomU, columnsAtMost - columns.length);
    if (patterns === undefined) return undefined;
    const most = limit ?? (yard === null ? 1 : allPieces);
    const own = [
      ...(yard === null ? [] : [[yardRow + yards.findIndex((each) => each.yard === yard), -1]]),
      ...(most < allPieces ? [[rows.length, 1]] : []),
    ];
    if (most < allPieces) rows.push({ least: 0, most });
    for (const counts of patterns) {
      const used = counts.flatMap((count, i) => (count > 0 ? [[use.row + i, count]] : []));
      const entries = [...used, ...own] as [number, number][];
      columns.push({
        cost: Math.round(price.si * 100),
        most,
        rows: entries.map(([row]) => row),
        amounts: entries.map(([, amount]) => amount),
      });
    }
  }
  return { columns, rows, whole: true };
}

/** The least total in cents by the full formulation, or undefined where it is too large or too slow. */
export async function fullTotal(
  problem: BuyingProblem,
  { solve, seconds, columnsAtMost }: { solve: Solve; seconds: number; columnsAtMost: number },
): Promise<number | undefined> {
  const program = fullFormulation(problem, columnsAtMost);
  if (program === undefined) return undefined;
  const { state, values } = await solve(program, { seconds, gap: 0.999 });
  if (state !== "optimal") return undefined;
  return program.columns.reduce((sum, { cost }, at) => sum + cost * Math.round(values[at] ?? 0), 0);
}
