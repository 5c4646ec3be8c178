import type { CuttingGroup, Pattern, PatternUse } from "./cutting-group.ts";
import type { IntegerProgram, ProgramColumn, ProgramRow } from "./solver.ts";

/** What a cheapest plan is chosen by: cost first, then fewer tight boards, then fewer boards. */
export interface Weights {
  readonly cost: number;
  readonly tight: number;
  readonly board: number;
}

/**
 * Weights that keep the order: a coin outweighs all tight boards there can be, a tight board all
 * boards. Shortening thus never comes about for anything but a lower cost. Where every board is
 * free, boards are counted in place of coins.
 */
export function orderedWeights(group: CuttingGroup, boardsAtMost: number): Weights {
  const more = boardsAtMost + 1;
  return group.kinds.every((kind) => kind.cost === 0)
    ? { cost: 0, tight: 1, board: more }
    : { cost: more * more, tight: more, board: 1 };
}

/** No cheapest plan has more boards: each carries a piece, and costs at least the least price. */
export function boardsAtMost(group: CuttingGroup, costAtMost: number): number {
  const pieces = group.classes.reduce((sum, each) => sum + each.demand, 0);
  const kept = group.kinds.reduce((sum, kind) => sum + (kind.kept ? kind.supply : 0), 0);
  const prices = group.kinds.filter((kind) => !kind.kept).map((kind) => kind.cost);
  const least = Math.min(...prices);
  if (!(least > 0) || !Number.isFinite(costAtMost)) return pieces;
  return Math.min(pieces, kept + Math.floor(costAtMost / least));
}

/**
 * The integer programme over a list of patterns: how many boards to cut by each, so that every
 * class gets at least its pieces and no board is used more often than it is there.
 */
export function boardProgram(
  group: CuttingGroup,
  patterns: readonly Pattern[],
  options: { readonly weights: Weights; readonly whole: boolean },
): IntegerProgram {
  const { weights, whole } = options;
  const rows: ProgramRow[] = group.classes.map(({ demand }) => ({
    least: demand,
    most: Number.POSITIVE_INFINITY,
  }));
  const supplyRow = new Map<number, number>();
  for (const [i, kind] of group.kinds.entries()) {
    if (kind.supply === Number.POSITIVE_INFINITY) continue;
    supplyRow.set(i, rows.length);
    rows.push({ least: Number.NEGATIVE_INFINITY, most: kind.supply });
  }
  const columns = patterns.map((pattern): ProgramColumn => {
    const kind = group.kinds[pattern.kind];
    const places = pattern.counts.flatMap((count, i) => (count > 0 ? [i] : []));
    const supply = supplyRow.get(pattern.kind);
    const coins = (kind?.cost ?? 0) * weights.cost;
    return {
      cost: coins + (pattern.tight ? weights.tight : 0) + weights.board,
      most: kind?.supply ?? Number.POSITIVE_INFINITY,
      rows: supply === undefined ? places : [...places, supply],
      amounts: [...places.map((i) => pattern.counts[i] ?? 0), ...(supply === undefined ? [] : [1])],
    };
  });
  return { columns, rows, whole };
}

/**
 * The least number of coins a plan can cost, from the solver's bound on the weighted sum: all that
 * is not coins weighs less than one coin.
 */
export function coinsAtLeast(bound: number, { cost }: Weights): number {
  if (cost === 0 || !Number.isFinite(bound)) return 0;
  return Math.max(0, Math.ceil((bound - cost + 1) / cost - 1e-6));
}

/** The patterns a solution uses. */
export function usesOf(patterns: readonly Pattern[], values: readonly number[]): PatternUse[] {
  return patterns.flatMap((pattern, i) => {
    const boards = Math.round(values[i] ?? 0);
    return boards > 0 ? [{ pattern, boards }] : [];
  });
}
