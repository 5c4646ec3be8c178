import { boardProgram, usesOf } from "./board-program.ts";
import type { CuttingGroup, Pattern, PatternUse } from "./cutting-group.ts";
import { gathered } from "./first-fit.ts";
import { type PricedPool, pricedPool, type WorkLeft } from "./pattern-pool.ts";
import { listPatterns } from "./patterns.ts";
import type { Solve } from "./solver.ts";

/** What planning a group needs. */
export interface GroupOptions {
  readonly solve: Solve;
  readonly seconds: number;
  readonly stopped: () => boolean;
}

/** How patterns are searched for. */
export interface SearchOptions extends GroupOptions {
  readonly sizesU: readonly number[];
  readonly work: WorkLeft;
}

// A rest this small is planned exactly.
const restPatterns = 300;

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

interface Rest {
  readonly patterns: readonly Pattern[];
  readonly proven: boolean;
}

async function exactRest(group: CuttingGroup, solve: Solve): Promise<Rest | undefined> {
  const patterns = listPatterns(group, restPatterns);
  if (!patterns) return undefined;
  const weights = { cost: 1, tight: 0, board: 0 };
  const limits = { seconds: 1, gap: 1 - 1e-6 };
  const solution = await solve(boardProgram(group, patterns, { weights, whole: true }), limits);
  if (solution.values.length === 0) return undefined;
  const used = usesOf(patterns, solution.values).flatMap(({ pattern, boards }) =>
    Array.from({ length: boards }, () => pattern),
  );
  return { patterns: used, proven: solution.state === "optimal" };
}

/** The patterns in use, and the newest of the others. */
function worthKeeping(group: CuttingGroup, { patterns, shares }: PricedPool): Pattern[] {
  const newest = patterns.length - 4 * group.classes.length;
  return patterns.filter((_, i) => (shares[i] ?? 0) > 1e-9 || i >= newest);
}

/** Settles on the surest boards of the relaxed plan, plans the rest again, and so on to the end. */
export async function dive(
  group: CuttingGroup,
  pool: PricedPool,
  options: SearchOptions,
): Promise<PatternUse[][]> {
  const done: Pattern[] = [];
  const plans: PatternUse[][] = [];
  let rest = group;
  let now = pool;
  for (let round = 0; round < 60 && options.work.left > 0 && !options.stopped(); round++) {
    const fixed = nextFixed(rest, now);
    if (fixed.length === 0) break;
    done.push(...fixed);
    rest = restOf(rest, fixed);
    if (rest.classes.every((each) => each.demand === 0)) return [...plans, gathered(done)];
    const exact = await exactRest(rest, options.solve);
    if (exact) plans.push(gathered([...done, ...exact.patterns]));
    if (exact?.proven) break;
    now = await pricedPool(rest, { ...options, start: worthKeeping(rest, now), rounds: 40 });
  }
  return plans;
}
