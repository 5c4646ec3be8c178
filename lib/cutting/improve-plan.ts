import { aloneModel, lossOf, type Worth } from "./cut-model.ts";
import { type CutPart, grainsPerMinor, type Pattern, type PatternUse } from "./cut-part.ts";
import { cutProgram } from "./cut-program.ts";
import { nearPatterns } from "./near-patterns.ts";
import type { Pacer } from "./pacer.ts";
import { gathered, patternRest, planCost } from "./pattern-cost.ts";
import { relax } from "./relaxed.ts";
import { restOfPart, stillNeeded, withoutDone } from "./rest-of-part.ts";
import { sequence } from "./sequence.ts";
import type { Solve } from "./solver.ts";

/** How a plan is improved. */
export interface ImproveOptions {
  readonly solve: Solve;
  readonly pacer: Pacer;
  readonly worth: Worth;
  /** It stops at this cost. */
  readonly goal: number;
  /** The least difference that counts, in grains. */
  readonly difference: number;
  /** How many times some of the boards are planned anew. */
  readonly rounds: number;
  /** How many pieces are planned anew at a time. */
  readonly pieces: number;
}

const piecesOf = ({ counts }: Pattern) => counts.reduce((sum, count) => sum + count, 0);

interface Board {
  readonly pattern: Pattern;
  readonly loss: number;
}

/** Boards to plan anew: those that lose most, and as many others. */
function pick(boards: readonly Board[], pieces: number, next: () => number): Set<number> {
  const byLoss = boards
    .map((board, i) => ({ i, key: board.loss * (0.3 + next()) }))
    .sort((a, b) => b.key - a.key);
  const others = boards.map((_, i) => ({ i, key: next() })).sort((a, b) => b.key - a.key);
  const chosen = new Set<number>();
  let count = 0;
  for (let n = 0; n < boards.length && count < pieces; n++) {
    for (const from of [byLoss, others]) {
      const at = from[n]?.i ?? 0;
      if (chosen.has(at)) continue;
      chosen.add(at);
      count += piecesOf((boards[at] as Board).pattern);
    }
  }
  return chosen;
}

const patternsAtMost = 300;

/** The cheapest way to make the pieces of some boards anew, if it is cheaper. */
async function again(
  part: CutPart,
  given: { readonly kept: readonly Pattern[]; readonly freed: readonly Pattern[] },
  options: ImproveOptions,
): Promise<readonly Pattern[] | undefined> {
  const { solve, pacer, difference } = options;
  const slim = withoutDone(restOfPart(part, given.kept));
  const start = given.freed.flatMap(
    (pattern) => stillNeeded(slim.part, slim.narrow(pattern)) ?? [],
  );
  const cost = planCost(slim.part, gathered(start));
  const relaxed = await relax(aloneModel(slim.part), { pacer, start: [start] });
  const gap = cost - difference - relaxed.worth.floor;
  if (!relaxed.feasible || gap < 0) return undefined;
  for (let lossAtMost = gap, tries = 0; tries < 16; tries++, lossAtMost /= 2) {
    const limits = { worth: relaxed.worth, part: 0, lossAtMost, patternsAtMost, stepsAtMost: 4e5 };
    const near = nearPatterns(slim.part, { ...limits, alone: true });
    await pacer.spend((near?.steps ?? 4e5) * 2);
    if (!near) continue;
    const pool = lossAtMost === gap ? [] : (relaxed.patterns[0] ?? []);
    const list = gathered([...near.patterns, ...pool, ...start]).map((use) => use.pattern);
    const { program, read } = cutProgram(aloneModel(slim.part), [list]);
    const solution = await solve(program, {
      seconds: 0.3,
      gap: (difference * 0.99) / grainsPerMinor,
    });
    if (solution.values.length === 0) return undefined;
    const uses = read(solution.values).uses[0] ?? [];
    if (planCost(slim.part, uses) > cost - difference) return undefined;
    return uses.flatMap(({ pattern, boards }) =>
      Array.from({ length: boards }, () => slim.widen(pattern)),
    );
  }
  return undefined;
}

/**
 * Improves a plan: again and again some of its boards, the most wasteful above all, are taken apart
 * and their pieces planned anew.
 */
export async function improvePlan(
  part: CutPart,
  uses: readonly PatternUse[],
  options: ImproveOptions,
): Promise<readonly PatternUse[]> {
  const { worth, goal, rounds, pieces } = options;
  const next = sequence(1);
  let now = uses.flatMap(({ pattern, boards }) => Array.from({ length: boards }, () => pattern));
  let cost = planCost(part, uses);
  for (let round = 0; round < rounds && cost > goal; round++) {
    const boards = now.map((pattern) => ({
      pattern,
      loss: lossOf(worth, 0, { pattern, rest: patternRest(part, pattern) }),
    }));
    const chosen = pick(boards, pieces, next);
    const kept = now.filter((_, i) => !chosen.has(i));
    const freed = now.filter((_, i) => chosen.has(i));
    const better = await again(part, { kept, freed }, options);
    if (!better) continue;
    now = [...kept, ...better];
    cost = planCost(part, gathered(now));
  }
  return gathered(now);
}
