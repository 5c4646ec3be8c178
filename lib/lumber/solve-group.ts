import {
  boardProgram,
  boardsAtMost,
  coinsAtLeast,
  orderedWeights,
  usesOf,
} from "./board-program.ts";
import { boundedPlan, type GroupPlan } from "./bounded-plan.ts";
import type { CuttingGroup } from "./cutting-group.ts";
import type { GroupOptions } from "./dive.ts";
import { costOf, firstFit } from "./first-fit.ts";
import { listPatterns } from "./patterns.ts";

/** Up to here all patterns are listed, and the plan is proven. */
const patternLimit = 600;

/**
 * The cheapest plan of a group, or undefined where its boards do not suffice. All patterns are
 * listed and the solver chooses among them, which proves the plan; where the list would be too long,
 * or the solver runs out of time, the plan comes with a floor instead.
 */
export async function solveGroup(
  group: CuttingGroup,
  options: GroupOptions,
): Promise<GroupPlan | undefined> {
  const patterns = listPatterns(group, patternLimit);
  if (!patterns) return boundedPlan(group, options);
  const hand = firstFit(group);
  const upper = hand ? costOf(group, hand) : Number.POSITIVE_INFINITY;
  const weights = orderedWeights(group, boardsAtMost(group, upper));
  const program = boardProgram(group, patterns, { weights, whole: true });
  const { seconds } = options;
  const solution = await options.solve(program, { seconds, gap: 1 - 1e-6 });
  if (solution.state === "infeasible") return undefined;
  const found = usesOf(patterns, solution.values);
  if (solution.state === "optimal") {
    return { uses: found, cost: costOf(group, found), floor: costOf(group, found) };
  }
  // Out of time: whatever is cheaper, with what is known of the least cost.
  const floor = coinsAtLeast(solution.bound, weights);
  const uses =
    hand && (found.length === 0 || costOf(group, hand) < costOf(group, found)) ? hand : found;
  if (uses.length === 0) return undefined;
  return { uses, cost: costOf(group, uses), floor: Math.min(floor, costOf(group, uses)) };
}
