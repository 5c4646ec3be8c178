import {
  type CutPart,
  filledU,
  fullSizes,
  type Pattern,
  type PatternUse,
  patternKey,
  restGrains,
} from "./cut-part.ts";
import { inTwoParts, laidInTwo } from "./two-parts.ts";

/** Whether a pattern fits with its pieces of these sizes. */
export function fits(part: CutPart, pattern: Pattern, sizesU: readonly number[]): boolean {
  const kind = part.kinds[pattern.kind];
  if (!kind || filledU(pattern.counts, sizesU) > kind.capacityU) return false;
  return kind.partsU === null || inTwoParts(part, kind, { ...pattern, sizesU }) !== undefined;
}

/** What the rests of a board cut so are worth, in grains: those that pieces of full length leave. */
export function patternRest(part: CutPart, pattern: Pattern): number {
  const kind = part.kinds[pattern.kind];
  if (!kind?.bought || part.rests === null) return 0;
  if (kind.partsU !== null) return laidInTwo(part, kind, pattern.counts)?.worth ?? 0;
  return restGrains(part, kind.capacityU, filledU(pattern.counts, fullSizes(part)));
}

/** What one board cut so costs, less what its rest is worth. */
export function patternCost(part: CutPart, pattern: Pattern): number {
  return (part.kinds[pattern.kind]?.cost ?? 0) - patternRest(part, pattern);
}

/** Whether the pieces fit only where some are cut short. */
export function isTight(part: CutPart, pattern: Pattern): boolean {
  return !fits(part, pattern, fullSizes(part));
}

/** How many boards of each kind a plan uses. */
export function boardsUsed(part: CutPart, uses: readonly PatternUse[]): number[] {
  const used = part.kinds.map(() => 0);
  for (const { pattern, boards } of uses) used[pattern.kind] = (used[pattern.kind] ?? 0) + boards;
  return used;
}

/** How many must be bought so that so many can be used. */
export const inSteps = (boards: number, step: number): number => Math.ceil(boards / step) * step;

/** What a plan costs: boards bought by the step, less what the rests are worth. */
export function planCost(part: CutPart, uses: readonly PatternUse[]): number {
  let cost = 0;
  for (const [i, boards] of boardsUsed(part, uses).entries()) {
    const kind = part.kinds[i];
    if (kind && boards > 0) cost += kind.cost * inSteps(boards, kind.step);
  }
  if (part.rests === null) return cost;
  return uses.reduce((sum, { pattern, boards }) => sum - boards * patternRest(part, pattern), cost);
}

/** Whether a plan makes all pieces and keeps to what there is of each kind. */
export function isPlan(part: CutPart, uses: readonly PatternUse[]): boolean {
  const made = new Float64Array(part.classes.length);
  for (const { pattern, boards } of uses) {
    const { counts } = pattern;
    for (let i = 0; i < counts.length; i++) {
      if (counts[i] !== 0) made[i] = (made[i] ?? 0) + boards * (counts[i] ?? 0);
    }
  }
  const enough = part.classes.every(({ demand }, i) => (made[i] ?? 0) >= demand);
  return (
    enough &&
    boardsUsed(part, uses).every((boards, i) => {
      const kind = part.kinds[i];
      if (!kind) return false;
      const enoughForPrice = boards === 0 || boards >= kind.from;
      return inSteps(boards, kind.step) <= kind.supply && boards >= kind.least && enoughForPrice;
    })
  );
}

/** Equal patterns as one, with the number of boards. */
export function gathered(patterns: readonly Pattern[]): PatternUse[] {
  const uses = new Map<string, { pattern: Pattern; boards: number }>();
  for (const pattern of patterns) {
    const key = patternKey(pattern);
    const use = uses.get(key);
    if (use) use.boards++;
    else uses.set(key, { pattern, boards: 1 });
  }
  return [...uses.values()];
}

/** The cheapest of several plans. */
export function cheapest(
  part: CutPart,
  plans: readonly (readonly PatternUse[])[],
): readonly PatternUse[] | undefined {
  let best: readonly PatternUse[] | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const plan of plans) {
    const cost = planCost(part, plan);
    if (cost < least && isPlan(part, plan)) [best, least] = [plan, cost];
  }
  return best;
}
