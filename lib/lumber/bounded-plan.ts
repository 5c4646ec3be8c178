import {
  boardProgram,
  boardsAtMost,
  coinsAtLeast,
  orderedWeights,
  usesOf,
} from "./board-program.ts";
import {
  type CuttingGroup,
  fullSizes,
  leastSizes,
  type Pattern,
  type PatternUse,
} from "./cutting-group.ts";
import { costOf, firstFit, gathered } from "./first-fit.ts";
import { type PricedPool, pricedPool } from "./pattern-pool.ts";
import { listPatterns, type PieceWorth } from "./patterns.ts";
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

// So many patterns near the least cost are still given to the solver at once.
const nearPatterns = 3000;

interface Search {
  readonly plans: PatternUse[][];
  readonly pool: Pattern[];
  readonly worth: PieceWorth;
}

/** Patterns as they are needed, and a plan from settling on the surest first. */
async function search(
  group: CuttingGroup,
  options: GroupOptions & { readonly sizesU: readonly number[] },
): Promise<Search> {
  const hand = firstFit(group);
  const start = hand?.map((use) => use.pattern) ?? [];
  const priced = await pricedPool(group, { ...options, start, rounds: 400 });
  const dived = await dive(group, priced, options);
  return {
    plans: [...(dived ? [gathered(dived)] : []), ...(hand ? [hand] : [])],
    pool: [...priced.patterns, ...(dived ?? [])],
    worth: priced.worth,
  };
}

function cheapest(group: CuttingGroup, plans: readonly PatternUse[][]): PatternUse[] | undefined {
  return [...plans].sort((a, b) => costOf(group, a) - costOf(group, b))[0];
}

/**
 * A plan where there are too many patterns to list. Patterns are made as they are needed, which gives
 * a floor under every plan and a first plan. A plan no dearer than that one can only use patterns that
 * lose no more than the gap between the two; these are listed and the solver chooses among them,
 * which proves the plan cheapest. Where even they are too many, the best over all patterns made is
 * taken, and the result says how far at most it is from the cheapest.
 */
export async function boundedPlan(
  group: CuttingGroup,
  options: GroupOptions,
): Promise<GroupPlan | undefined> {
  const { solve, seconds } = options;
  const sizesU = leastSizes(group);
  const { plans, pool, worth } = await search(group, { ...options, sizesU });
  const costAtMost = Math.min(...plans.map((plan) => costOf(group, plan)));
  const near = Number.isFinite(costAtMost)
    ? listPatterns(group, nearPatterns, { worth, costAtMost })
    : undefined;
  const full = fullSizes(group);
  if (!near && full.some((size, i) => size !== sizesU[i])) {
    const whole = await search(group, { ...options, sizesU: full });
    plans.push(...whole.plans);
    pool.push(...whole.pool);
  }
  const patterns = near ?? gathered(pool).map((use) => use.pattern);
  const weights = orderedWeights(group, boardsAtMost(group, costAtMost));
  const program = boardProgram(group, patterns, { weights, whole: true });
  const solution = await solve(program, { seconds: seconds / 2, gap: 1 - 1e-6 });
  const found = usesOf(patterns, solution.values);
  let floor = Math.max(0, Math.ceil(worth.floor - 1e-6));
  // Plans of other patterns than the near ones cost more than `costAtMost`.
  if (near) floor = Math.max(floor, Math.min(costAtMost, coinsAtLeast(solution.bound, weights)));
  if (solution.values.length > 0) {
    const cost = costOf(group, found);
    if (near && solution.state === "optimal") return { uses: found, cost, floor: cost };
    // First among equals: it was chosen with as few shortened boards as the patterns allow.
    plans.unshift(found);
  }
  const best = cheapest(group, plans);
  return best && { uses: best, cost: costOf(group, best), floor };
}
