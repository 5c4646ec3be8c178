import { correctedValues } from "./corrected-values.ts";
import { costStep } from "./cost-step.ts";
import { aloneModel, type Worth } from "./cut-model.ts";
import {
  type CutPart,
  grainsPerMinor,
  longestU,
  type Pattern,
  type PatternUse,
} from "./cut-part.ts";
import { cutProgram } from "./cut-program.ts";
import { dive } from "./dive.ts";
import { firstFit } from "./first-fit.ts";
import { improvePlan } from "./improve-plan.ts";
import { classesAtMost, mergedSizes, unmerged } from "./merged-sizes.ts";
import { nearPatterns } from "./near-patterns.ts";
import type { Pacer } from "./pacer.ts";
import { cheapest, gathered, planCost } from "./pattern-cost.ts";
import { type Relaxed, relax } from "./relaxed.ts";
import { roundedOff } from "./round-off.ts";
import { worthByLength } from "./safe-worth.ts";
import type { Solve } from "./solver.ts";
import { countsBoards, wholeBoards } from "./whole-boards.ts";

/** What planning takes. */
export interface PartOptions {
  readonly solve: Solve;
  /** Seconds the solver may take in one go. */
  readonly seconds: number;
  readonly pacer: Pacer;
  /** Each better plan so far. */
  readonly improved?: ((plan: PartPlan) => void) | undefined;
}

/** A plan of one part, and the least that any plan of it can cost. In grains. */
export interface PartPlan {
  readonly uses: readonly PatternUse[];
  readonly cost: number;
  readonly floor: number;
  /** The values that the floor began from. */
  readonly worth: Worth;
}

// So many patterns near the floor are given to the solver at once.
const nearAtMost = 1500;
const manyAtMost = 6000;

class Search {
  readonly part: CutPart;
  readonly options: PartOptions;
  readonly relaxed: Relaxed;
  readonly step: number;
  floor: number;
  best: readonly PatternUse[] | undefined;
  cost = Number.POSITIVE_INFINITY;

  constructor(part: CutPart, relaxed: Relaxed, options: PartOptions) {
    this.part = part;
    this.options = options;
    this.relaxed = relaxed;
    this.step = costStep(part);
    this.floor = this.#inSteps(relaxed.worth.floor);
  }

  #inSteps(floor: number): number {
    return Math.ceil((floor - 1e-3) / this.step) * this.step;
  }

  raise(floor: number): void {
    this.floor = Math.max(this.floor, this.#inSteps(Math.min(floor, this.cost)));
  }

  take(...plans: readonly (readonly PatternUse[] | undefined)[]): boolean {
    const found = cheapest(
      this.part,
      plans.flatMap((plan) => (plan ? [plan] : [])),
    );
    if (!found) return false;
    const cost = planCost(this.part, found);
    if (cost >= this.cost) return false;
    this.best = found;
    this.cost = cost;
    this.tell();
    return true;
  }

  tell(): void {
    if (this.best) this.options.improved?.(this.plan() as PartPlan);
  }

  /** The least by which another plan must be cheaper to be worth finding. */
  get improvement(): number {
    return Math.max(this.step, grainsPerMinor / 100);
  }

  get proven(): boolean {
    return this.cost - this.floor < this.improvement;
  }

  plan(): PartPlan | undefined {
    const { best: uses, cost, relaxed } = this;
    if (!uses) return undefined;
    return { uses, cost, floor: this.proven ? cost : this.floor, worth: relaxed.worth };
  }
}

/** Lists patterns near the floor and lets the solver choose; true where that settles it. */
async function chooseNear(search: Search, patternsAtMost: number): Promise<boolean> {
  const { part, relaxed, options } = search;
  const { worth } = relaxed;
  const whole = search.cost - search.improvement - worth.floor;
  let lossAtMost = Number.isFinite(whole) ? whole : worth.floor * 0.1;
  for (let tries = 0; tries < 12; tries++) {
    const limits = { worth, part: 0, lossAtMost, patternsAtMost, alone: true };
    const near = nearPatterns(part, limits);
    await options.pacer.spend(near?.steps ?? 1e6);
    if (near) return choose(search, near.patterns, lossAtMost);
    lossAtMost /= 2;
  }
  return false;
}

async function choose(
  search: Search,
  near: readonly Pattern[],
  lossAtMost: number,
): Promise<boolean> {
  const { part, relaxed, options } = search;
  const complete = lossAtMost >= search.cost - search.improvement - relaxed.worth.floor;
  const pool = complete ? [] : (relaxed.patterns[0] ?? []);
  const own = search.best?.map((use) => use.pattern) ?? [];
  const list = gathered([...near, ...pool, ...own]).map((use) => use.pattern);
  const { program, read } = cutProgram(aloneModel(part), [list]);
  const gap = (search.improvement * 0.999) / grainsPerMinor;
  const solution = await options.solve(program, { seconds: options.seconds, gap });
  if (solution.values.length > 0) search.take(read(solution.values).uses[0]);
  const inList = solution.state === "infeasible" ? Infinity : solution.bound * grainsPerMinor;
  if (complete && solution.state !== "stopped") search.floor = search.cost;
  // Whatever is not in the list costs at least as much as its worst.
  else search.raise(Math.min(inList, relaxed.worth.floor + lossAtMost));
  return search.proven;
}

const dives = [
  { share: 0.1, restPieces: 30 },
  { share: 0.001, restPieces: 30 },
  { share: 0.05, restPieces: 60 },
];
const diveWork = 4e7;

/** Settles how many boards of each kind first, then how they are cut; true where that proves the plan. */
async function countFirst(search: Search): Promise<boolean> {
  const { part, relaxed, options } = search;
  const limits = { costAtMost: search.cost - search.improvement + 1, rounds: countRounds };
  const found = await wholeBoards(part, relaxed, { ...options, ...limits });
  search.raise(found.floor);
  if (search.proven || !found.relaxed) return search.proven;
  const kinds = part.kinds.map((kind, k) => ({ ...kind, supply: found.numbers[k] ?? 0 }));
  for (const each of dives) {
    const how = { ...options, ...each, work: diveWork, whole: part };
    search.take(await dive({ ...part, kinds }, found.relaxed, how));
    if (search.proven) return true;
    const goal = search.floor + search.improvement - 1;
    const passes = { pacer: options.pacer, goal, passes: 100, work: correctWork };
    search.take(await correctedValues({ ...part, kinds }, passes));
    if (search.proven) return true;
  }
  return false;
}

const correctWork = 3e7;
const countRounds = 60;

/** Takes some of the boards apart again and again. */
async function polish(search: Search, pieces: number): Promise<boolean> {
  const { part, relaxed, options, best } = search;
  if (!best) return false;
  const { solve, pacer } = options;
  const goal = search.floor + search.improvement - 1;
  const how = { solve, pacer, worth: relaxed.worth, goal, difference: search.improvement };
  search.take(await improvePlan(part, best, { ...how, rounds: 30, pieces }));
  return search.proven;
}

const mergedClasses = 150;

/** The relaxed plan of a part: its floor, and the patterns to begin with. */
export async function relaxPart(part: CutPart, pacer: Pacer): Promise<Relaxed> {
  if (part.classes.length > classesAtMost) return relaxMerged(part, pacer);
  const start = [firstFit(part)?.map((use) => use.pattern) ?? []];
  return relax(aloneModel(part), { pacer, start });
}

/** A floor with the values of neighbouring lengths alike: any filling was one of shorter pieces too. */
async function relaxMerged(part: CutPart, pacer: Pacer): Promise<Relaxed> {
  const { part: shorter, into } = mergedSizes(part, mergedClasses, "shortest");
  const relaxed = await relaxPart(shorter, pacer);
  const own = relaxed.worth.values[0] ?? [];
  const merged = { ...relaxed.worth, values: [into.map((at) => own[at] ?? 0)] };
  const byLength = worthByLength(part);
  const worth = byLength.floor > merged.floor ? byLength : merged;
  return { ...relaxed, patterns: [[]], shares: [[]], worth };
}

/** A plan of very many lengths: neighbours as long as the longest of them. */
async function solveMerged(search: Search): Promise<PartPlan | undefined> {
  const { part, options } = search;
  const merged = mergedSizes(part, mergedClasses, "longest");
  const longest = Math.max(0, ...part.kinds.map(longestU));
  if (merged.part.classes.every((each) => each.leastU <= longest)) {
    const relaxed = await relaxPart(merged.part, options.pacer);
    const [patterns = [], shares = []] = [relaxed.patterns[0], relaxed.shares[0]];
    const plans = relaxed.feasible ? roundedOff(merged.part, patterns, shares) : [];
    const best = cheapest(merged.part, plans);
    if (best) search.take(unmerged(part, merged, best));
  }
  return search.plan();
}

/**
 * The cheapest plan of a part, or undefined where its boards do not suffice. First fit gives a plan
 * at once; generated patterns give a floor; a plan nearer to the floor than the present one can only
 * use patterns that lose no more than the gap, and among these the solver chooses, which proves the
 * plan. Where they are too many, the plan comes with its floor.
 */
export async function solvePart(
  part: CutPart,
  options: PartOptions,
  begun?: Relaxed,
): Promise<PartPlan | undefined> {
  const hand = firstFit(part);
  const relaxed = begun ?? (await relaxPart(part, options.pacer));
  if (!relaxed.feasible) return undefined;
  const search = new Search(part, relaxed, options);
  search.take(hand, ...roundedOff(part, relaxed.patterns[0] ?? [], relaxed.shares[0] ?? []));
  if (search.proven) return search.plan();
  if (part.classes.length > classesAtMost) return solveMerged(search);
  const pieces = part.classes.reduce((sum, each) => sum + each.demand, 0);
  const easy = part.classes.length <= 20 || pieces <= 60;
  if (easy && (await chooseNear(search, nearAtMost))) return search.plan();
  if (countsBoards(part) && (await countFirst(search))) return search.plan();
  for (const each of easy ? dives.slice(0, 1) : dives) {
    search.take(await dive(part, relaxed, { ...options, ...each, work: diveWork }));
    if (search.proven) return search.plan();
  }
  for (const pieces of easy ? [] : [25, 50]) {
    if (await polish(search, pieces)) return search.plan();
  }
  for (const most of [nearAtMost, nearAtMost, manyAtMost]) {
    if (await chooseNear(search, most)) break;
  }
  return search.plan();
}
