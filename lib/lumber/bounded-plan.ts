import { boardProgram, boardsAtMost, orderedWeights, usesOf } from "./board-program.ts";
import {
  type CuttingGroup,
  fullSizes,
  leastSizes,
  type Pattern,
  type PatternUse,
} from "./cutting-group.ts";
import { costOf, firstFit, gathered } from "./first-fit.ts";
import { type PricedPool, pricedPool } from "./pattern-pool.ts";
import { listPatterns } from "./patterns.ts";
import type { Solve } from "./solver.ts";

export interface GroupOptions {
  readonly solve: Solve;
  readonly seconds: number;
  readonly stopped: () => boolean;
}

/** The plan of one group, and the least that any plan of it can cost. */
export interface GroupPlan {
  readonly uses: readonly PatternUse[];
  readonly cost: number;
  readonly floor: number;
}

// A rest this small is planned exactly.
const restPatterns = 400;

/** The group with what these boards have taken care of left out. */
function restOf(group: CuttingGroup, fixed: readonly Pattern[]): CuttingGroup {
  const made = group.classes.map(() => 0);
  const used = group.kinds.map(() => 0);
  for (const pattern of fixed) {
    used[pattern.kind] = (used[pattern.kind] ?? 0) + 1;
    for (const [i, count] of pattern.counts.entries()) made[i] = (made[i] ?? 0) + count;
  }
  return {
    ...group,
    classes: group.classes.map((each, i) => ({
      ...each,
      demand: Math.max(0, each.demand - (made[i] ?? 0)),
    })),
    kinds: group.kinds.map((kind, i) => ({ ...kind, supply: kind.supply - (used[i] ?? 0) })),
  };
}

/** The patterns to settle on next: all whole boards of the relaxed plan, else its largest parts. */
function nextFixed(group: CuttingGroup, pool: PricedPool): Pattern[] {
  const whole = pool.patterns.flatMap((pattern, i) =>
    Array.from({ length: Math.floor((pool.shares[i] ?? 0) + 1e-6) }, () => pattern),
  );
  if (whole.length > 0) return whole;
  const order = pool.patterns
    .map((pattern, i) => ({ pattern, share: pool.shares[i] ?? 0 }))
    .filter(({ share }) => share > 1e-6)
    .sort((a, b) => b.share - a.share);
  const fixed: Pattern[] = [];
  let rest = group;
  for (const { pattern } of order) {
    const fits = pattern.counts.every((count, i) => count <= (rest.classes[i]?.demand ?? 0));
    const there = (rest.kinds[pattern.kind]?.supply ?? 0) >= 1;
    if (!there || (fixed.length > 0 && !fits)) continue;
    fixed.push(pattern);
    rest = restOf(rest, [pattern]);
    if (fixed.length >= Math.max(1, order.length / 10)) break;
  }
  return fixed;
}

async function exactRest(group: CuttingGroup, solve: Solve): Promise<Pattern[] | undefined> {
  const patterns = listPatterns(group, restPatterns);
  if (!patterns) return undefined;
  const weights = { cost: 1, tight: 0, board: 0 };
  const limits = { seconds: 1 };
  const solution = await solve(boardProgram(group, patterns, { weights, whole: true }), limits);
  if (solution.values.length === 0) return undefined;
  return usesOf(patterns, solution.values).flatMap(({ pattern, boards }) =>
    Array.from({ length: boards }, () => pattern),
  );
}

/** Settles on the surest boards of the relaxed plan, plans the rest again, and so on to the end. */
async function dive(
  group: CuttingGroup,
  pool: PricedPool,
  options: GroupOptions & { readonly sizesU: readonly number[] },
): Promise<Pattern[] | undefined> {
  const done: Pattern[] = [];
  let rest = group;
  let now = pool;
  for (let round = 0; round < 60 && !options.stopped(); round++) {
    const fixed = nextFixed(rest, now);
    if (fixed.length === 0) return undefined;
    done.push(...fixed);
    rest = restOf(rest, fixed);
    if (rest.classes.every((each) => each.demand === 0)) return done;
    const exact = await exactRest(rest, options.solve);
    if (exact) return [...done, ...exact];
    now = await pricedPool(rest, { ...options, start: now.patterns, rounds: 40 });
  }
  return undefined;
}

/**
 * A plan where there are too many patterns to list: patterns made as they are needed, a plan from
 * settling on the surest first, then the best whole plan over all patterns made. The result carries
 * a floor under every plan; where the plan costs just that, it is proven cheapest.
 */
export async function boundedPlan(
  group: CuttingGroup,
  options: GroupOptions,
): Promise<GroupPlan | undefined> {
  const { solve, seconds, stopped } = options;
  const start = firstFit(group)?.map((use) => use.pattern) ?? [];
  const least = leastSizes(group);
  const full = fullSizes(group);
  const shortens = full.some((size, i) => size !== least[i]);
  let floor = 0;
  const plans: PatternUse[][] = [];
  const pool: Pattern[] = [];
  for (const sizesU of shortens ? [full, least] : [least]) {
    const each = { ...options, sizesU, stopped };
    const priced = await pricedPool(group, { ...each, start, rounds: 400 });
    // Only the shortest lengths allowed bound every plan.
    if (sizesU === least) floor = priced.floor;
    pool.push(...priced.patterns);
    const dived = await dive(group, priced, each);
    if (dived) plans.push(gathered(dived));
    if (dived) pool.push(...dived);
  }
  const hand = firstFit(group);
  if (hand) plans.push(hand);
  const upper = Math.min(...plans.map((plan) => costOf(group, plan)));
  const weights = orderedWeights(group, boardsAtMost(group, upper));
  const distinct = gathered(pool).map((use) => use.pattern);
  const program = boardProgram(group, distinct, { weights, whole: true });
  const solution = await solve(program, { seconds: seconds / 2, gap: 1 - 1e-6 });
  if (solution.values.length > 0) plans.unshift(usesOf(distinct, solution.values));
  const best = plans.sort((a, b) => costOf(group, a) - costOf(group, b))[0];
  if (!best) return undefined;
  return { uses: best, cost: costOf(group, best), floor: Math.ceil(floor - 1e-6) };
}
