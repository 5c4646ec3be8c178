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
import { dive, type GroupOptions, type SearchOptions } from "./dive.ts";
import { costOf, firstFit, gathered, patternKey } from "./first-fit.ts";
import { pricedPool } from "./pattern-pool.ts";
import { listPatterns, type PieceWorth } from "./patterns.ts";

/** The plan of one group, and the least that any plan of it can cost. */
export interface GroupPlan {
  readonly uses: readonly PatternUse[];
  readonly cost: number;
  readonly floor: number;
}

// As much as a hundred beds, each of its own size, need with room to spare.
const workAllowed = 2.5e7;

// So many patterns near the least cost are still given to the solver at once.
const nearPatterns = 3000;

interface Search {
  readonly plans: PatternUse[][];
  readonly pool: Pattern[];
  readonly worth: PieceWorth;
}

/** Patterns as they are needed, and a plan from settling on the surest first. */
async function search(group: CuttingGroup, options: Omit<SearchOptions, "work">): Promise<Search> {
  const hand = firstFit(group);
  const start = hand?.map((use) => use.pattern) ?? [];
  // The floor may take as much as the first plan.
  const half = () => ({ ...options, work: { left: workAllowed / 2 } });
  const priced = await pricedPool(group, { ...half(), start, rounds: 400 });
  const dived = await dive(group, priced, half());
  return {
    plans: hand ? [...dived, hand] : dived,
    pool: [...priced.patterns, ...dived.flat().map((use) => use.pattern)],
    worth: priced.worth,
  };
}

function cheapest(group: CuttingGroup, plans: readonly PatternUse[][]): PatternUse[] | undefined {
  return [...plans].sort((a, b) => costOf(group, a) - costOf(group, b))[0];
}

function distinct(patterns: readonly Pattern[]): Pattern[] {
  return gathered(patterns).map((use) => use.pattern);
}

interface NearList {
  readonly patterns: readonly Pattern[];
  /** A plan with any other pattern costs at least this much. */
  readonly othersCost: number;
}

/** The patterns within the gap between floor and plan, or within as much of it as can be listed. */
function listNear(
  group: CuttingGroup,
  worth: PieceWorth,
  costAtMost: number,
): NearList | undefined {
  for (let share = 1; share > 0.01; share /= 2) {
    const othersCost = worth.floor + share * (costAtMost - worth.floor);
    const patterns = listPatterns(group, nearPatterns, { worth, costAtMost: othersCost });
    if (patterns) return { patterns, othersCost };
  }
  return undefined;
}

/**
 * A plan where there are too many patterns to list. Patterns are made as they are needed, which gives
 * a floor under every plan and a first plan. A plan no dearer than that one can only use patterns that
 * lose no more than the gap between the two; these are listed and the solver chooses among them,
 * which proves the plan cheapest. Where even they are too many, the nearest are taken along with all
 * patterns made, and a better plan narrows the gap for the next time. The result says how far at most
 * it is from the cheapest.
 */
export async function boundedPlan(
  group: CuttingGroup,
  options: GroupOptions,
): Promise<GroupPlan | undefined> {
  const sizesU = leastSizes(group);
  const { plans, pool, worth } = await search(group, { ...options, sizesU });
  const full = fullSizes(group);
  const costNow = () => Math.min(...plans.map((plan) => costOf(group, plan)));
  let floor = Math.max(0, Math.ceil(worth.floor - 1e-6));
  for (let round = 0; round < 3 && !options.stopped(); round++) {
    const costAtMost = costNow();
    const near = Number.isFinite(costAtMost) ? listNear(group, worth, costAtMost) : undefined;
    const whole = near !== undefined && near.othersCost >= costAtMost;
    if (!whole && round === 0 && full.some((size, i) => size !== sizesU[i])) {
      const unshortened = await search(group, { ...options, sizesU: full });
      plans.push(...unshortened.plans);
      pool.push(...unshortened.pool);
    }
    const listed = near?.patterns ?? [];
    const start = cheapest(group, plans) ?? [];
    const patterns = distinct([
      ...listed,
      ...(whole ? [] : pool),
      ...start.map((use) => use.pattern),
    ]);
    const chosen = await choose(group, patterns, { ...options, costAtMost, start });
    // Found first among equals: chosen with as few shortened boards as its patterns allow.
    if (chosen.uses) plans.unshift(chosen.uses);
    const others = near ? Math.ceil(near.othersCost - 1e-6) : floor;
    floor = Math.max(floor, Math.min(chosen.floor, others));
    if (whole || costNow() >= costAtMost) break;
  }
  const best = cheapest(group, plans);
  if (!best) return undefined;
  const cost = costOf(group, best);
  return { uses: best, cost, floor: Math.min(floor, cost) };
}

/** The best plan over a list of patterns, and the least that any plan over them can cost. */
async function choose(
  group: CuttingGroup,
  patterns: readonly Pattern[],
  options: GroupOptions & { readonly costAtMost: number; readonly start: readonly PatternUse[] },
): Promise<{ uses: PatternUse[] | undefined; floor: number }> {
  const weights = orderedWeights(group, boardsAtMost(group, options.costAtMost));
  const program = boardProgram(group, patterns, { weights, whole: true });
  const boards = new Map(options.start.map((use) => [patternKey(use.pattern), use.boards]));
  const start = patterns.map((pattern) => boards.get(patternKey(pattern)) ?? 0);
  const limits = {
    seconds: options.seconds / 3,
    gap: 1 - 1e-6,
    ...(boards.size > 0 ? { start } : {}),
  };
  const solution = await options.solve(program, limits);
  const infeasible = solution.state === "infeasible";
  const uses = solution.values.length > 0 ? usesOf(patterns, solution.values) : undefined;
  const proven = solution.state === "optimal" && uses;
  return {
    uses,
    floor: infeasible
      ? Number.POSITIVE_INFINITY
      : proven
        ? costOf(group, uses)
        : coinsAtLeast(solution.bound, weights),
  };
}
