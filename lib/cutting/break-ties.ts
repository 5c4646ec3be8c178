import { aloneModel } from "./cut-model.ts";
import { type CutPart, endless, grainsPerMinor, type PatternUse } from "./cut-part.ts";
import { cutProgram } from "./cut-program.ts";
import { nearPatterns } from "./near-patterns.ts";
import { boardsUsed, gathered, isPlan, isTight, planCost } from "./pattern-cost.ts";
import type { PartOptions, PartPlan } from "./solve-part.ts";

const patternsAtMost = 1200;
const secondsAtMost = 2;

/** The part with its price breaks settled as a plan uses them. */
function asUsed(part: CutPart, uses: readonly PatternUse[]): CutPart {
  const used = boardsUsed(part, uses);
  const kinds = part.kinds.map((kind, k) => {
    if (kind.from <= 1) return kind;
    const boards = used[k] ?? 0;
    return boards > 0
      ? { ...kind, from: 0, least: Math.max(kind.least, kind.from) }
      : { ...kind, from: 0, supply: 0 };
  });
  return { ...part, kinds };
}

/**
 * Among the plans that cost no more, one with fewer boards whose pieces must be cut short, then with
 * fewer boards, then with fewer cuts; where all boards are free, fewer of them come first. The best
 * that is found in a short time.
 */
export async function breakTies(
  part: CutPart,
  plan: PartPlan,
  { solve, pacer }: Pick<PartOptions, "solve" | "pacer">,
): Promise<PartPlan> {
  const boards = plan.uses.reduce((sum, use) => sum + use.boards, 0);
  const pieces = part.classes.reduce((sum, each) => sum + each.demand, 0);
  const free = part.kinds.every((kind) => kind.cost === 0);
  if (part.classes.length > 250) return plan;
  if (boards <= 1 && !plan.uses.some((use) => isTight(part, use.pattern))) return plan;
  const settled = asUsed(part, plan.uses);
  const lossAtMost = plan.cost - plan.worth.floor + (free ? 0 : grainsPerMinor / 1000);
  const near = nearPatterns(settled, {
    worth: plan.worth,
    part: 0,
    lossAtMost,
    patternsAtMost,
    alone: part.kinds.every((kind) => kind.supply === endless || !kind.bought),
  });
  await pacer.spend(near?.steps ?? 1e6);
  const own = plan.uses.map((use) => use.pattern);
  const list = gathered([...(near?.patterns ?? []), ...own]).map((use) => use.pattern);
  const weights = free
    ? { cut: 1, tight: pieces + 1, board: (pieces + 1) * (boards + 2) }
    : { cut: 1, board: pieces + 1, tight: (pieces + 1) * (boards + 2) };
  const costAtMost = plan.cost + grainsPerMinor / 200;
  const { program, read } = cutProgram(aloneModel(settled), [list], { ...weights, costAtMost });
  const solution = await solve(program, { seconds: secondsAtMost, gap: 0.5 });
  const uses = solution.values.length > 0 ? read(solution.values).uses[0] : undefined;
  if (!uses || !isPlan(part, uses) || planCost(part, uses) > plan.cost) return plan;
  return { ...plan, uses };
}
