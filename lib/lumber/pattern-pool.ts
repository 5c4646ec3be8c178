import { boardProgram } from "./board-program.ts";
import { type CuttingGroup, demands, filledU, fullSizes, type Pattern } from "./cutting-group.ts";
import { patternKey } from "./first-fit.ts";
import { knapsackTable } from "./knapsack.ts";
import type { PieceWorth } from "./patterns.ts";
import type { Solve } from "./solver.ts";

/** Patterns worth having, what the relaxed programme makes of them, and a floor under every plan. */
export interface PricedPool {
  readonly patterns: readonly Pattern[];
  /** How many boards by each pattern, where parts of boards could be bought. */
  readonly shares: readonly number[];
  /** The worth of pieces that gives the highest floor under every plan, in coins. */
  readonly worth: PieceWorth;
}

/**
 * How much reckoning may still be done, in entries of the programmes solved. Counted, not timed: the
 * library has no clock, and the same problem is to give the same plan on a slow machine.
 */
export interface WorkLeft {
  left: number;
}

/** The counts, less pieces that no longer fit, more pieces that still do. */
function fitted(
  counts: readonly number[],
  {
    sizesU,
    most,
    capacityU,
  }: { sizesU: readonly number[]; most: readonly number[]; capacityU: number },
): number[] {
  const kept = counts.slice();
  let left = capacityU - filledU(kept, sizesU);
  for (let i = kept.length - 1; i >= 0 && left < 0; i--) {
    while (left < 0 && (kept[i] ?? 0) > 0) {
      kept[i] = (kept[i] ?? 0) - 1;
      left += sizesU[i] ?? 0;
    }
  }
  for (const [i, size] of sizesU.entries()) {
    while (size <= left && (kept[i] ?? 0) < (most[i] ?? 0)) {
      kept[i] = (kept[i] ?? 0) + 1;
      left -= size;
    }
  }
  return kept;
}

/**
 * Where there are too many patterns to list, only those are made that could lower the cost: solve
 * the relaxed programme over the patterns at hand, value each piece by what one more would cost,
 * look for a board that holds more value than its price, and go on until there is none
 * (Gilmore and Gomory 1961). The values, scaled so that no board holds more than its price, bound
 * the cost of every plan from below (Farley 1990), whatever the solver's precision.
 */
export async function pricedPool(
  group: CuttingGroup,
  options: {
    readonly solve: Solve;
    readonly sizesU: readonly number[];
    readonly start: readonly Pattern[];
    readonly rounds: number;
    readonly work: WorkLeft;
    readonly stopped: () => boolean;
  },
): Promise<PricedPool> {
  const { solve, sizesU, rounds, stopped, work } = options;
  const most = demands(group);
  const full = fullSizes(group);
  const longestU = Math.max(...group.kinds.map((kind) => kind.capacityU));
  const price = knapsackTable(sizesU, most, longestU);
  const pool = new Map<string, Pattern>();
  const add = (kind: number, counts: readonly number[]) => {
    const capacityU = group.kinds[kind]?.capacityU ?? 0;
    const filled = fitted(counts, { sizesU, most, capacityU });
    const pattern = { kind, counts: filled, tight: filledU(filled, full) > capacityU };
    if (!filled.some((count) => count > 0) || pool.has(patternKey(pattern))) return false;
    pool.set(patternKey(pattern), pattern);
    return true;
  };
  for (const pattern of options.start) add(pattern.kind, pattern.counts);
  for (const [i, sizeU] of sizesU.entries()) {
    // Boards full of one length make a first plan possible; later ones come by price.
    for (const kind of startKinds(group, sizeU)) {
      add(
        kind,
        sizesU.map((_, j) => (i === j ? (most[i] ?? 0) : 0)),
      );
    }
  }
  // By length alone: what a length costs where it is cheapest.
  const perUnit = cheapestUnit(group);
  const byLength = sizesU.map((sizeU) => sizeU * perUnit);
  let best = safeWorth(group, byLength, (capacityU) => capacityU * perUnit);
  let shares: readonly number[] = [];
  for (let round = 0; round < rounds && work.left > 0 && !stopped(); round++) {
    const patterns = [...pool.values()];
    work.left -= patterns.length * (most.length + group.kinds.length) + price.cells / 100;
    const weights = { cost: 1, tight: 0, board: 0 };
    const relaxed = await solve(boardProgram(group, patterns, { weights, whole: false }), {});
    if (relaxed.state !== "optimal") break;
    shares = relaxed.values;
    const values = most.map((_, i) => Math.max(0, relaxed.rowWorth[i] ?? 0));
    const table = price.fill(values);
    const worth = safeWorth(group, values, table.valueOf);
    if (worth.floor > best.floor) best = worth;
    let grown = false;
    for (const [i, kind] of group.kinds.entries()) {
      if (
        table.valueOf(kind.capacityU) <=
        supplyWorth(group, relaxed.rowWorth, i) + kind.cost + 1e-7
      )
        continue;
      if (add(i, table.fillingOf(kind.capacityU))) grown = true;
    }
    if (!grown) break;
  }
  return { patterns: [...pool.values()], shares, worth: best };
}

const isEndless = (kind: { readonly supply: number }) => kind.supply === Number.POSITIVE_INFINITY;

function cheapestUnit(group: CuttingGroup): number {
  const rates = group.kinds.filter(isEndless).map((kind) => kind.cost / kind.capacityU);
  return rates.length === 0 ? 0 : Math.min(...rates);
}

/** The cheapest kind without limit that holds a piece; every kind where there is none. */
function startKinds(group: CuttingGroup, sizeU: number): number[] {
  const kinds = [...group.kinds.keys()];
  const endless = kinds.filter((i) => {
    const kind = group.kinds[i];
    return kind && isEndless(kind) && kind.capacityU >= sizeU;
  });
  const rate = (i: number) => (group.kinds[i]?.cost ?? 0) / (group.kinds[i]?.capacityU ?? 1);
  const best = endless.sort((a, b) => rate(a) - rate(b))[0];
  return best === undefined ? kinds : [best];
}

/** What one more board of a limited kind would save, by the relaxed programme. */
function supplyWorth(group: CuttingGroup, rowWorth: readonly number[], kind: number): number {
  if (group.kinds[kind]?.supply === Number.POSITIVE_INFINITY) return 0;
  const limitedBefore = group.kinds
    .slice(0, kind)
    .filter((other) => other.supply !== Number.POSITIVE_INFINITY).length;
  return Math.max(0, -(rowWorth[group.classes.length + limitedBefore] ?? 0));
}

/** Values scaled down until no board without limit holds more than its price. */
function safeWorth(
  group: CuttingGroup,
  raw: readonly number[],
  worthOf: (capacityU: number) => number,
): PieceWorth {
  let scale = 1;
  for (const kind of group.kinds) {
    if (kind.supply !== Number.POSITIVE_INFINITY) continue;
    const worth = worthOf(kind.capacityU);
    if (worth > kind.cost) scale = Math.min(scale, kind.cost / worth);
  }
  const values = raw.map((value) => value * scale);
  const boards = group.kinds.map((kind) =>
    kind.supply === Number.POSITIVE_INFINITY
      ? 0
      : Math.max(0, scale * worthOf(kind.capacityU) - kind.cost),
  );
  let floor = 0;
  for (const [i, each] of group.classes.entries()) floor += (values[i] ?? 0) * each.demand;
  for (const [i, kind] of group.kinds.entries()) {
    if (kind.supply !== Number.POSITIVE_INFINITY) floor -= kind.supply * (boards[i] ?? 0);
  }
  return { values, boards, floor };
}
