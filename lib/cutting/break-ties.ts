import { aloneModel } from "./cut-model.ts";
import { type CutPart, endless, grainsPerMinor, type PatternUse } from "./cut-part.ts";
import { cutProgram } from "./cut-program.ts";
import { classesAtMost } from "./merged-sizes.ts";
import { nearPatterns } from "./near-patterns.ts";
import { boardsUsed, gathered, isPlan, isTight, planCost } from "./pattern-cost.ts";
import type { PartOptions, PartPlan } from "./solve-part.ts";
import type { IntegerProgram, Solve } from "./solver.ts";

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
  if (part.classes.length > classesAtMost) return plan;
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
  if (solution.values.length === 0) return plan;
  const good = (values: readonly number[]) => {
    const uses = read(values).uses[0] ?? [];
    return isPlan(part, uses) && planCost(part, uses) <= plan.cost ? uses : undefined;
  };
  const uses = good(solution.values);
  if (!uses) return plan;
  const fewer = await fewerLayouts(program, { values: solution.values, count: list.length, solve });
  return { ...plan, uses: (fewer && good(fewer)) ?? uses };
}

const layoutsAtMost = 60;

/** Among the solutions that are as good, one that cuts boards in fewer different ways. */
async function fewerLayouts(
  program: IntegerProgram,
  given: { readonly values: readonly number[]; readonly count: number; readonly solve: Solve },
): Promise<readonly number[] | undefined> {
  const { values, count, solve } = given;
  const layouts = values.slice(0, count).filter((value) => value > 0.5).length;
  if (layouts <= 2 || count > layoutsAtMost) return undefined;
  const asGood = program.columns.reduce((sum, { cost }, i) => sum + cost * (values[i] ?? 0), 0);
  const least = program.rows.length;
  const columns = program.columns.map((column, i) => ({
    ...column,
    cost: 0,
    rows: [...column.rows, least, ...(i < count ? [least + 1 + i] : [])],
    amounts: [...column.amounts, column.cost, ...(i < count ? [1] : [])],
  }));
  const used = columns.slice(0, count).map((column, i) => ({
    cost: 1,
    most: 1,
    rows: [least + 1 + i],
    amounts: [-column.most],
  }));
  const none = Number.NEGATIVE_INFINITY;
  const rows = [
    ...program.rows,
    { least: none, most: asGood + 0.5 },
    ...used.map(() => ({ least: none, most: 0 })),
  ];
  const found = await solve(
    { whole: true, columns: [...columns, ...used], rows },
    { seconds: layoutSeconds, gap: 0.99 },
  );
  return found.values.length > 0 ? found.values : undefined;
}

const layoutSeconds = 0.3;
