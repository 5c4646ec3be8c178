import type { CutKind, CutPart } from "./cut-part.ts";
import { boardsUsed } from "./pattern-cost.ts";
import type { Relaxed } from "./relaxed.ts";
import { type PartOptions, type PartPlan, solvePart } from "./solve-part.ts";

/** A part in which some price breaks are settled on, and others are not used at all. */
interface Settled {
  readonly part: CutPart;
  /** No plan of it costs less. */
  readonly floor: number;
}

/** The first kind that is used, but for fewer boards than its price asks. */
function brokenKind(part: CutPart, plan: PartPlan): number {
  const used = boardsUsed(part, plan.uses);
  return part.kinds.findIndex((kind, k) => {
    const boards = used[k] ?? 0;
    return boards > 0 && boards < kind.from;
  });
}

const withKind = (part: CutPart, at: number, change: Partial<CutKind>): CutPart => ({
  ...part,
  kinds: part.kinds.map((kind, k) => (k === at ? { ...kind, ...change } : kind)),
});

/** The part with every price open to any number of boards: its plans cost no more. */
export const unbroken = (part: CutPart): CutPart => ({
  ...part,
  kinds: part.kinds.map((kind) => ({ ...kind, from: 0 })),
});

const mostBranches = 200;

/**
 * The cheapest plan of a part some of whose prices hold from a number of boards on. Planned as if
 * they held for any number; where the plan then uses such a price for too few, once without that
 * price and once with at least as many as it asks, and so on, the lowest floor first.
 */
export async function solveWithBreaks(
  part: CutPart,
  options: PartOptions,
  begun?: Relaxed,
): Promise<PartPlan | undefined> {
  if (part.kinds.every((kind) => kind.from <= 1)) return solvePart(part, options, begun);
  let best: PartPlan | undefined;
  let first: PartPlan | undefined;
  let floor = Number.POSITIVE_INFINITY;
  const quiet = { ...options, improved: undefined };
  const open: Settled[] = [{ part, floor: 0 }];
  for (let n = 0; n < mostBranches && open.length > 0; n++) {
    open.sort((a, b) => b.floor - a.floor);
    const now = open.pop() as Settled;
    if (best && now.floor >= best.cost) continue;
    const plan = await solvePart(unbroken(now.part), quiet);
    first ??= plan;
    if (!plan || (best && plan.floor >= best.cost)) continue;
    const broken = brokenKind(now.part, plan);
    if (broken < 0) {
      floor = Math.min(floor, plan.floor);
      if (!best || plan.cost < best.cost) {
        best = plan;
        options.improved?.(plan);
      }
      continue;
    }
    const from = now.part.kinds[broken]?.from ?? 0;
    const without = withKind(now.part, broken, { supply: 0, from: 0 });
    const enough = withKind(now.part, broken, { least: from, from: 0 });
    open.push({ part: without, floor: plan.floor }, { part: enough, floor: plan.floor });
  }
  if (!best) return undefined;
  const rest = Math.min(floor, ...open.map((each) => each.floor), best.cost);
  return { ...best, floor: rest, worth: first?.worth ?? best.worth };
}
