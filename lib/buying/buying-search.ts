import { ProblemError, type Remark } from "../check/index.ts";
import type { PriceIndex } from "../cost/price-index.ts";
import { breakTies } from "../cutting/break-ties.ts";
import { grainsPerMinor } from "../cutting/cut-part.ts";
import { firstFit } from "../cutting/first-fit.ts";
import { Pacer } from "../cutting/pacer.ts";
import { cheapest } from "../cutting/pattern-cost.ts";
import type { Relaxed } from "../cutting/relaxed.ts";
import { roundedOff } from "../cutting/round-off.ts";
import { worthByLength } from "../cutting/safe-worth.ts";
import { type PartPlan, relaxPart } from "../cutting/solve-part.ts";
import { solveWithBreaks, unbroken } from "../cutting/with-breaks.ts";
import type { SplicedPiece } from "../lumber/board-plan.ts";
import type { ChosenTimbers } from "../lumber/choose-timber.ts";
import { noPlanProblem, piecesThatFitNothing } from "../lumber/explain-failure.ts";
import type { CuttingGroup } from "../lumber/make-groups.ts";
import { groupKey } from "../lumber/plan-boards.ts";
import { type Basket, weigh } from "./basket.ts";
import type { BuyingOptions } from "./buying-options.ts";
import type { BuyingPlan } from "./buying-plan.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import {
  type Candidate,
  candidatesOf,
  fixedParts,
  groupsAt,
  groupsEverywhere,
  holdsAll,
  tripsCostNothing,
} from "./candidates.ts";
import { describePlan, type FloorFound } from "./describe-plan.ts";
import { type Offered, TripSearch } from "./solve-ways.ts";

/** What is known once its boards have been looked at. */
interface Looked {
  readonly groups: readonly CuttingGroup[];
  /** One for each group. */
  readonly worths: readonly Relaxed["worth"][];
  readonly floor: number;
}

/** A candidate that is still to be looked at or planned. */
interface Open {
  readonly candidate: Candidate;
  readonly floor: number;
  readonly looked?: Looked;
}

/** What the pieces became, and what was said about it. */
export interface Prepared {
  readonly timbers: ChosenTimbers;
  readonly spliced: readonly SplicedPiece[];
  readonly remarks: readonly Remark[];
}

// Differences under a hundredth of the minor unit are not worth the search.
const difference = grainsPerMinor / 100;

const handTries = 12;

// So much is planned before anybody can have looked at what was told before.
const easyWork = 5e6;

// Floors are remembered for as long as the plans they belong to.
const relaxedBefore = new WeakMap<object, Map<string, Relaxed>>();
const relaxedAtMost = 400;

function relaxedWith(remembered: object): Map<string, Relaxed> {
  const known = relaxedBefore.get(remembered) ?? new Map<string, Relaxed>();
  if (known.size > relaxedAtMost) known.clear();
  relaxedBefore.set(remembered, known);
  return known;
}

/** The search for the cheapest plan over all yards and ways. */
export class BuyingSearch {
  readonly #problem: BuyingProblem;
  readonly #prepared: Prepared;
  readonly #index: PriceIndex;
  readonly #options: BuyingOptions;
  readonly #pacer: Pacer;
  readonly #remembered: Map<string, PartPlan>;
  readonly #relaxed: Map<string, Relaxed>;
  readonly #floors: FloorFound[] = [];
  #best: Offered | undefined;
  #leastFloor = 0;

  constructor(
    problem: BuyingProblem,
    prepared: Prepared,
    index: PriceIndex,
    options: BuyingOptions,
  ) {
    this.#problem = problem;
    this.#prepared = prepared;
    this.#index = index;
    this.#options = options;
    const { signal, pause, remembered = new Map() } = options;
    this.#pacer = new Pacer({ signal, pause });
    this.#remembered = remembered;
    this.#relaxed = relaxedWith(remembered);
  }

  async run(): Promise<BuyingPlan> {
    const everywhere = groupsEverywhere(this.#problem, this.#prepared.timbers);
    this.#refuseWhatFitsNothing(everywhere);
    const open = candidatesOf(this.#problem, this.#index);
    // The plainest floor, by length alone, so that the first plan can be told with one.
    const byLength = everywhere.map(({ part }) => Math.max(0, worthByLength(part).floor));
    this.#leastFloor = Math.min(...open.map((each) => each.fixed), Number.MAX_VALUE);
    for (const floor of byLength) this.#leastFloor += floor;
    this.#byHand(open);
    let boardsFloor = 0;
    for (const group of everywhere) {
      boardsFloor += (await this.#floorOf(group)).worth.floor;
    }
    await this.#lowestFirst(
      open.map((candidate) => ({ candidate, floor: boardsFloor + candidate.fixed })),
    );
    if (!this.#best) throw new ProblemError([this.#noPlan(everywhere)]);
    // The sum and the proof stand; what is left to do only makes the cutting easier.
    if (this.#pacer.spent > easyWork) this.#options.improved?.(this.#describe(true));
    await this.#settleTies();
    return this.#describe(true);
  }

  /** Looks at the candidates, the one with the lowest floor first, until no other can be cheaper. */
  async #lowestFirst(open: Open[]): Promise<void> {
    for (let n = 0; open.length > 0; n++) {
      open.sort((a, b) => b.candidate.unsold - a.candidate.unsold || b.floor - a.floor);
      const now = open.pop() as Open;
      const { candidate, floor, looked } = now;
      if (candidate.unsold > this.#unsold()) break;
      await this.#pacer.spend(1);
      this.#leastFloor = Math.min(...this.#floors.map((each) => each.proven), floor);
      if (this.#tooDear(floor, candidate)) this.#dismiss(candidate, floor);
      else if (looked) {
        this.#options.progress?.(this.#words(candidate), n / (n + open.length + 1));
        await this.#tryWays(candidate, looked);
      } else {
        const found = await this.#lookAt(candidate);
        if (!found) continue;
        open.push({ candidate, floor: Math.max(floor, found.floor), looked: found });
        // From here on the plan by hand can be told with how far at most it is from the cheapest.
        if (n === 0) this.#tell();
      }
    }
  }

  /** The floor under all plans with these yards in these ways; undefined where there is none. */
  async #lookAt({ ways, fixed }: Candidate): Promise<Looked | undefined> {
    const groups = groupsAt(this.#problem, this.#prepared.timbers, ways);
    if (!groups.every(holdsAll)) return undefined;
    let floor = fixed;
    const worths: Relaxed["worth"][] = [];
    for (const group of groups) {
      const relaxed = await this.#floorOf(group);
      if (!relaxed.feasible) return undefined;
      floor += relaxed.worth.floor;
      worths.push(relaxed.worth);
    }
    return { groups, worths, floor };
  }

  /** How many needs the best so far leaves unsold. */
  #unsold(): number {
    const best = this.#best;
    return best ? this.#problem.needs.length - best.basket.goods.length : Number.POSITIVE_INFINITY;
  }

  #refuseWhatFitsNothing(groups: readonly CuttingGroup[]): void {
    const { boards } = this.#problem;
    const problems = groups.flatMap((group) => piecesThatFitNothing(boards, group));
    for (const group of groups) {
      if (!holdsAll(group) && problems.length === 0) problems.push(noPlanProblem(boards, group));
    }
    if (problems.length > 0) throw new ProblemError(problems);
  }

  #noPlan(groups: readonly CuttingGroup[]) {
    const { boards } = this.#problem;
    const short = groups.find((group) => this.#relaxed.get(groupKey(group, 0))?.feasible === false);
    return noPlanProblem(boards, short ?? (groups[0] as CuttingGroup));
  }

  /** A first plan at once: by first fit, at the yards where that is best. */
  #byHand(open: readonly Candidate[]): void {
    const least = open[0]?.unsold ?? 0;
    for (const { ways, goods } of open
      .filter((each) => each.unsold === least)
      .slice(0, handTries)) {
      const groups = groupsAt(this.#problem, this.#prepared.timbers, ways);
      const uses = groups.map((group) => firstFit(group.part));
      if (!uses.every((each) => each !== undefined)) continue;
      this.#take({ ways, groups, uses: uses as Basket["uses"], goods });
    }
    this.#tell();
  }

  #take(basket: Basket): boolean {
    const weighed = weigh(this.#problem, basket);
    return this.#takeOffered({ basket, weighed });
  }

  #takeOffered(offered: Offered): boolean {
    const { basket, weighed } = offered;
    if (!weighed.isEnough) return false;
    const best = this.#best;
    const more = best ? basket.goods.length - best.basket.goods.length : 1;
    if (best && (more < 0 || (more === 0 && weighed.grains >= best.weighed.grains))) return false;
    this.#best = offered;
    return true;
  }

  /** Tells of the best so far, unless all of it was planned before: then the end is near. */
  #tell(): void {
    const { improved, seconds = 10 } = this.#options;
    const best = this.#best;
    if (!best || !improved) return;
    const isKnown = (group: CuttingGroup) => this.#remembered.has(groupKey(group, seconds));
    if (best.basket.groups.length > 0 && best.basket.groups.every(isKnown)) return;
    improved(this.#describe(false));
  }

  #words({ ways }: Candidate): string {
    const names = ways.map(({ terms, way }) => `${terms.yard} ${way}`).join(", ");
    return names === "" ? "Planning with the boards kept" : `Planning ${names}`;
  }

  /** Whether nothing there can be cheaper than the best so far that has as many of the goods. */
  #tooDear(floor: number, { goods }: Candidate): boolean {
    const best = this.#best;
    return (
      best !== undefined &&
      best.basket.goods.length >= goods.length &&
      floor > best.weighed.grains - difference
    );
  }

  #dismiss({ ways }: Candidate, floor: number): void {
    this.#floors.push({ ways, floor, groups: null, others: [], proven: floor });
  }

  async #floorOf(group: CuttingGroup): Promise<Relaxed> {
    const key = groupKey(group, 0);
    const known = this.#relaxed.get(key);
    if (known) return known;
    const relaxed = await relaxPart(unbroken(group.part), this.#pacer);
    this.#relaxed.set(key, relaxed);
    return relaxed;
  }

  /** Plans with these yards in these ways, where it can be done. */
  async #tryWays(candidate: Candidate, looked: Looked): Promise<void> {
    const { ways, offers, goods, fixed } = candidate;
    const { groups, worths, floor } = looked;
    const others = fixedParts(this.#problem, candidate);
    const plans = await this.#planGroups(groups, candidate);
    if (!plans) return;
    const basket = { ways, groups, uses: plans.map((plan) => plan.uses), goods };
    const offered = { basket, weighed: weigh(this.#problem, basket) };
    const apartFloor = plans.reduce((sum, plan) => sum + plan.floor, fixed);
    const isApart = offered.weighed.isEnough && offered.weighed.trips.every((trips) => trips <= 1);
    if (this.#takeOffered(offered)) this.#tell();
    if (isApart || tripsCostNothing(this.#problem, ways)) {
      const own = groups.map((group, g) => ({
        group,
        worth: worths[g] as Relaxed["worth"],
        part: 0,
      }));
      this.#floors.push({ ways, floor, groups: own, others, proven: apartFloor });
      return;
    }
    const best = this.#best;
    const below = best && best.basket.goods.length >= goods.length ? best.weighed.grains : Infinity;
    const { solve, seconds = 10 } = this.#options;
    const search = new TripSearch(
      { problem: this.#problem, ways, groups, offers },
      { solve, seconds, pacer: this.#pacer, below, difference },
      { offered, floor: apartFloor },
    );
    const found = await search.run();
    if (found.best && this.#takeOffered(found.best)) this.#tell();
    const { root } = found;
    const own = groups.map((group, part) => ({
      group,
      worth: root ? root.worth : (worths[part] as Relaxed["worth"]),
      part: root ? part : 0,
    }));
    const told = root ? { floor: root.floor, others: root.parts } : { floor, others };
    this.#floors.push({ ways, groups: own, ...told, proven: found.floor });
  }

  async #planGroups(
    groups: readonly CuttingGroup[],
    { ways, goods }: Candidate,
  ): Promise<PartPlan[] | undefined> {
    const { solve, seconds = 10 } = this.#options;
    const plans: PartPlan[] = [];
    const uses: (Basket["uses"][number] | undefined)[] = [];
    for (const group of groups) uses.push(await this.#quickly(group, seconds));
    if (uses.every((each) => each !== undefined)) {
      if (this.#take({ ways, groups, uses: uses as Basket["uses"], goods })) this.#tell();
    }
    for (const [g, group] of groups.entries()) {
      const key = groupKey(group, seconds);
      const improved = (plan: PartPlan) => {
        uses[g] = plan.uses;
        if (!uses.every((each) => each !== undefined)) return;
        if (this.#take({ ways, groups, uses: uses as Basket["uses"], goods })) this.#tell();
      };
      const options = { solve, seconds, pacer: this.#pacer, improved };
      const begun = await this.#floorOf(group);
      const plan = this.#remembered.get(key) ?? (await solveWithBreaks(group.part, options, begun));
      if (!plan) return undefined;
      this.#remembered.set(key, plan);
      uses[g] = plan.uses;
      plans.push(plan);
    }
    return plans;
  }

  /** A good plan of a group, near the relaxed one. */
  async #quickly(
    group: CuttingGroup,
    seconds: number,
  ): Promise<Basket["uses"][number] | undefined> {
    const { part } = group;
    const known = this.#remembered.get(groupKey(group, seconds));
    if (known) return known.uses;
    const { patterns, shares } = await this.#floorOf(group);
    const rounded = roundedOff(part, patterns[0] ?? [], shares[0] ?? []);
    const hand = firstFit(part);
    return cheapest(part, hand ? [...rounded, hand] : rounded);
  }

  /** Of the plans that cost no more, the one that is easiest to cut. */
  async #settleTies(): Promise<void> {
    const best = this.#best as Offered;
    const { basket } = best;
    const { seconds = 10 } = this.#options;
    for (const [g, group] of basket.groups.entries()) {
      const plan = this.#remembered.get(groupKey(group, seconds));
      const now = this.#best as Offered;
      const own = now.basket.uses[g];
      if (!plan || !own || plan.uses !== own) continue;
      const tied = await this.#easiest(group, plan);
      const uses = now.basket.uses.map((each, i) => (i === g ? tied.uses : each));
      const next = { ...now.basket, uses };
      const weighed = weigh(this.#problem, next);
      if (weighed.isEnough && weighed.grains <= now.weighed.grains) {
        this.#best = { basket: next, weighed };
      }
    }
  }

  async #easiest(group: CuttingGroup, plan: PartPlan): Promise<PartPlan> {
    const key = `${groupKey(group, 0)} easiest`;
    const known = this.#remembered.get(key);
    if (known) return known;
    const { solve } = this.#options;
    const tied = await breakTies(group.part, plan, { solve, pacer: this.#pacer });
    this.#remembered.set(key, tied);
    return tied;
  }

  #describe(last: boolean): BuyingPlan {
    const best = this.#best as Offered;
    const floor = last
      ? Math.min(...this.#floors.map((each) => each.proven))
      : Math.max(0, this.#leastFloor);
    return describePlan(this.#problem, {
      ...this.#prepared,
      best,
      floor,
      floors: last ? this.#floors : [],
      index: this.#index,
      difference,
    });
  }
}
