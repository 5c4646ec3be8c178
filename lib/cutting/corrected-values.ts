import { type CutPart, leastSizes, type Pattern, type PatternUse } from "./cut-part.ts";
import { fillingTable } from "./filling-table.ts";
import type { Pacer } from "./pacer.ts";
import { fits, gathered, isPlan, planCost } from "./pattern-cost.ts";
import { isDone, restOfPart, withoutDone } from "./rest-of-part.ts";
import { sequence } from "./sequence.ts";

/** How long values are corrected. */
export interface CorrectOptions {
  readonly pacer: Pacer;
  /** It stops at this cost, in grains. */
  readonly goal: number;
  /** How many plans are made. */
  readonly passes: number;
  /** Work it may take. */
  readonly work: number;
}

// Large pieces are worth a little more than their length: they are hard to place later.
const power = 1.05;
const bonus = 1.05;

/** What a board is counted at: a free one a little less than the cheapest length of its size. */
function countedCosts(part: CutPart): number[] {
  const rates = part.kinds.filter(({ cost }) => cost > 0).map((kind) => kind.cost / kind.capacityU);
  const rate = rates.length > 0 ? Math.min(...rates) : 1;
  return part.kinds.map(({ cost, capacityU }) => (cost > 0 ? cost : 0.95 * rate * capacityU));
}

/** The board that pays best at these values, and how often it is cut so; undefined where none fits. */
function nextBoard(
  rest: CutPart,
  values: readonly number[],
  costs: readonly number[],
): { readonly pattern: Pattern; readonly work: number } | undefined {
  const slim = withoutDone(rest);
  const own = values.filter((_, i) => (rest.classes[i]?.demand ?? 0) > 0);
  const sizesU = leastSizes(slim.part);
  const table = fillingTable(slim.part, sizesU);
  const filled = table.fill(own);
  let kind = -1;
  let most = 0;
  for (const [k, { supply }] of slim.part.kinds.entries()) {
    const rate = supply >= 1 ? filled.worthOf(k) / (costs[k] ?? 1) : 0;
    if (rate > most) [kind, most] = [k, rate];
  }
  if (kind < 0) return undefined;
  const pattern = { kind, counts: filled.countsOf(kind) };
  if (!pattern.counts.some((count) => count > 0) || !fits(slim.part, pattern, sizesU))
    return undefined;
  return { pattern: slim.widen(pattern), work: table.cells };
}

/**
 * Plans made board after board: each time the one whose pieces are worth most for its cost. Values
 * begin at the lengths; pieces on a board that loses much become worth more, so that the next plan
 * cuts them earlier. After Mukhacheva's sequential correction of values (Belov and Scheithauer 2007).
 */
export async function correctedValues(
  part: CutPart,
  { pacer, goal, passes, work }: CorrectOptions,
): Promise<PatternUse[] | undefined> {
  const until = pacer.spent + work;
  const chance = sequence(1);
  const costs = countedCosts(part);
  const longest = Math.max(...leastSizes(part));
  const sizes = leastSizes(part).map((sizeU) => sizeU * (sizeU / longest) ** (power - 1) * bonus);
  const rate = Math.min(...part.kinds.map(({ capacityU }, k) => (costs[k] ?? 1) / capacityU));
  const values = leastSizes(part).map((sizeU) => sizeU * rate);
  let best: PatternUse[] | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let pass = 0; pass < passes && pacer.spent < until && least > goal; pass++) {
    let rest = part;
    const done: Pattern[] = [];
    while (!isDone(rest)) {
      const next = nextBoard(rest, values, costs);
      if (!next) break;
      await pacer.spend(next.work);
      const { pattern } = next;
      const boards = repeats(rest, pattern);
      const made = Array.from({ length: boards }, () => pattern);
      done.push(...made);
      rest = restOfPart(rest, made);
      correct(pattern, { part, rest, values, sizes, cost: costs[pattern.kind] ?? 0, chance });
    }
    if (!isDone(rest)) continue;
    const uses = gathered(done);
    const cost = isPlan(part, uses) ? planCost(part, uses) : Number.POSITIVE_INFINITY;
    if (cost < least) [best, least] = [uses, cost];
  }
  return best;
}

/** How often a pattern is cut at once: half of what it could be, so that others have a turn. */
function repeats(rest: CutPart, { kind, counts }: Pattern): number {
  const most = counts.reduce(
    (least, count, i) =>
      count > 0 ? Math.min(least, Math.floor((rest.classes[i]?.demand ?? 0) / count)) : least,
    rest.kinds[kind]?.supply ?? 0,
  );
  return Math.max(1, Math.floor(most / 2));
}

function correct(
  { counts }: Pattern,
  given: {
    readonly part: CutPart;
    readonly rest: CutPart;
    readonly values: number[];
    readonly sizes: readonly number[];
    readonly cost: number;
    readonly chance: () => number;
  },
): void {
  const { part, rest, values, sizes, cost, chance } = given;
  const used = counts.reduce((sum, count, i) => sum + count * (part.classes[i]?.leastU ?? 0), 0);
  for (const [i, count] of counts.entries()) {
    if (count === 0) continue;
    const needed = (part.classes[i]?.demand ?? 0) + (rest.classes[i]?.demand ?? 0);
    const share = count / (count + needed * (1.8 + 0.4 * chance()));
    values[i] = (1 - share) * (values[i] ?? 0) + share * (((sizes[i] ?? 0) * cost) / used);
  }
}
