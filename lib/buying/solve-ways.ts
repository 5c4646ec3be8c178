import type { Worth } from "../cutting/cut-model.ts";
import { grainsPerMinor, type Pattern } from "../cutting/cut-part.ts";
import { cutProgram } from "../cutting/cut-program.ts";
import { nearPatterns } from "../cutting/near-patterns.ts";
import type { Pacer } from "../cutting/pacer.ts";
import { gathered, isPlan } from "../cutting/pattern-cost.ts";
import { type Relaxed, relax } from "../cutting/relaxed.ts";
import type { Solve } from "../cutting/solver.ts";
import type { CuttingGroup } from "../lumber/make-groups.ts";
import { type Basket, type Weighed, weigh } from "./basket.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import type { GoodsOffer } from "./goods-offers.ts";
import { leastOrderCents, tripGrains } from "./tariff.ts";
import { floorParts, type TripModel, type TripRange, tripModel } from "./trip-model.ts";
import type { YardWay } from "./ways.ts";

/** A basket with its sum. */
export interface Offered {
  readonly basket: Basket;
  readonly weighed: Weighed;
}

/** What is planned together: yards and ways settled on, boards and goods not. */
export interface WaysProblem {
  readonly problem: BuyingProblem;
  readonly ways: readonly YardWay[];
  readonly groups: readonly CuttingGroup[];
  readonly offers: readonly (readonly GoodsOffer[])[];
}

/** How it is planned. */
export interface WaysOptions {
  readonly solve: Solve;
  readonly seconds: number;
  readonly pacer: Pacer;
  /** Only what costs less than this is of use, in grains. */
  readonly below: number;
  /** The least difference that counts, in grains. */
  readonly difference: number;
}

/** What was found: the best basket below the limit, if any, and the floor under all. */
export interface WaysFound {
  readonly best: Offered | undefined;
  readonly floor: number;
  /** The values of the first floor, and its parts besides pieces and boards. */
  readonly root:
    | {
        readonly worth: Worth;
        readonly parts: readonly { readonly what: string; readonly grains: number }[];
        readonly floor: number;
      }
    | undefined;
}

const mostBranches = 80;
const patternsAtMost = 4000;

interface Branch {
  readonly trips: TripRange;
  readonly floor: number;
}

/** Trips and boards decided together: first so many trips, then so many more, the lowest floor first. */
export class TripSearch {
  readonly #given: WaysProblem;
  readonly #options: WaysOptions;
  readonly #apart: Offered | undefined;
  readonly #apartFloor: number;
  best: Offered | undefined;
  below: number;
  root: WaysFound["root"];
  /** Patterns once made serve again. */
  #made: Relaxed["patterns"] | undefined;

  /** @param apart the best with weights and least orders left out, and the floor under that */
  constructor(
    given: WaysProblem,
    options: WaysOptions,
    apart: { readonly offered: Offered | undefined; readonly floor: number },
  ) {
    this.#given = given;
    this.#options = options;
    this.#apart = apart.offered;
    this.#apartFloor = apart.floor;
    this.below = options.below;
    if (apart.offered) this.#take(apart.offered);
  }

  #take(offered: Offered): void {
    const { weighed } = offered;
    if (!weighed.isEnough || weighed.grains >= this.below) return;
    this.best = offered;
    this.below = weighed.grains;
  }

  async run(): Promise<WaysFound> {
    const { ways } = this.#given;
    const first: Branch = {
      trips: { least: ways.map(() => 1), most: ways.map(() => Number.POSITIVE_INFINITY) },
      floor: 0,
    };
    const open: Branch[] = [first];
    let floor = Number.POSITIVE_INFINITY;
    for (let n = 0; n < mostBranches && open.length > 0; n++) {
      open.sort((a, b) => b.floor - a.floor);
      const now = open.pop() as Branch;
      if (this.#tooDear(now.floor)) {
        floor = Math.min(floor, now.floor);
        continue;
      }
      const done = await this.#look(now, open);
      floor = Math.min(floor, done);
    }
    for (const each of open) floor = Math.min(floor, each.floor);
    if (this.#leavesOutFillers()) floor = Math.min(floor, this.root?.floor ?? 0);
    return { best: this.best, floor, root: this.root };
  }

  /**
   * Whether an order may be made large enough by boards on which no piece fits: they are in no
   * pattern, so no more is known than the first floor says.
   */
  #leavesOutFillers(): boolean {
    if (this.#apart?.weighed.isEnough !== false) return false;
    const { problem, ways, groups } = this.#given;
    const orders = new Set(
      ways.filter((own) => leastOrderCents(own) > 0).map(({ terms }) => terms.yard),
    );
    const planned = new Set(groups.flatMap(({ kinds }) => kinds.flatMap((kind) => kind.stock)));
    return problem.boards.stock.some(
      ({ yard }, row) => yard !== null && orders.has(yard) && !planned.has(row),
    );
  }

  #tooDear(floor: number): boolean {
    return floor > this.below - this.#options.difference;
  }

  /** Settles a branch, or parts it in two; gives the floor under what is settled. */
  async #look(now: Branch, open: Branch[]): Promise<number> {
    const { problem, ways, groups, offers } = this.#given;
    const trips = tripModel(problem, { ways, groups, offers, trips: now.trips });
    const start = this.#made;
    const relaxed = await relax(trips.model, {
      pacer: this.#options.pacer,
      ...(start === undefined ? {} : { start }),
    });
    this.#made = relaxed.patterns;
    const sure = trips.sure.reduce((sum, each) => sum + each.grains, 0);
    const floor = Math.max(now.floor, relaxed.worth.floor + sure);
    this.root ??= {
      worth: relaxed.worth,
      parts: [...floorParts(trips, relaxed.worth), ...trips.sure],
      floor: relaxed.worth.floor + sure,
    };
    if (!relaxed.feasible) return Number.POSITIVE_INFINITY;
    if (this.#tooDear(floor)) return floor;
    const more = trips.tripYards.map((at, i) => ({
      at,
      trips: relaxed.extras[trips.offers.length + i] ?? 0,
    }));
    const begun = more.find((each) => each.trips > 1e-6);
    if (begun) {
      const least = now.trips.least[begun.at] ?? 1;
      this.#part(
        open,
        { trips: now.trips, floor },
        begun.at,
        least + Math.ceil(begun.trips - 1e-6),
      );
      return Number.POSITIVE_INFINITY;
    }
    return this.#atTheLeast({ trips: now.trips, floor }, open, { trips, relaxed, sure });
  }

  /** Fewer trips than so many to a yard, or at least so many. */
  #part(open: Branch[], now: Branch, at: number, count: number): void {
    const { least, most } = now.trips;
    const change = (list: readonly number[], value: number) =>
      list.map((own, i) => (i === at ? value : own));
    open.push({ trips: { least, most: change(most, count - 1) }, floor: now.floor });
    if (count <= (most[at] ?? 1)) {
      open.push({ trips: { least: change(least, count), most }, floor: now.floor });
    }
  }

  /** A branch whose relaxed plan needs no more than the least trips. */
  async #atTheLeast(
    now: Branch,
    open: Branch[],
    found: { readonly trips: TripModel; readonly relaxed: Relaxed; readonly sure: number },
  ): Promise<number> {
    const apart = this.#apart;
    const { least, most } = now.trips;
    if (!apart) return this.#together(now, found);
    const over = apart.weighed.trips.findIndex((count, at) => count > (least[at] ?? 1));
    if (over < 0 && apart.weighed.isEnough) {
      return Math.max(now.floor, this.#apartFloor + this.#tripsBeyond(least));
    }
    if (over < 0 || (most[over] ?? 1) <= (least[over] ?? 1)) return this.#together(now, found);
    this.#part(open, now, over, (least[over] ?? 1) + 1);
    return Number.POSITIVE_INFINITY;
  }

  /** What so many trips cost more than one to each yard. */
  #tripsBeyond(least: readonly number[]): number {
    return this.#given.ways.reduce(
      (sum, { terms, way }, at) =>
        sum + (way === "fetched" ? ((least[at] ?? 1) - 1) * tripGrains(terms) : 0),
      0,
    );
  }

  /** Boards and goods of a branch by one integer programme over the patterns within the gap. */
  async #together(
    now: Branch,
    found: { readonly trips: TripModel; readonly relaxed: Relaxed; readonly sure: number },
  ): Promise<number> {
    const { trips, relaxed, sure } = found;
    const { solve, seconds, difference } = this.#options;
    await this.#fromPool(trips, relaxed, sure);
    const gap = this.below - difference - sure - relaxed.worth.floor;
    const lists = await this.#near(trips, relaxed, gap);
    if (!lists) return now.floor;
    const { program, read } = cutProgram(trips.model, lists);
    const limits = { seconds, gap: (difference * 0.99) / grainsPerMinor };
    const solution = await solve(program, limits);
    if (solution.values.length > 0) this.#offer(trips, read(solution.values));
    if (solution.state === "infeasible") return Number.POSITIVE_INFINITY;
    if (solution.state === "optimal") return Math.max(now.floor, this.below);
    return Math.max(now.floor, Math.min(this.below, solution.bound * grainsPerMinor + sure));
  }

  /** A first basket from the patterns that the relaxed plan was made of. */
  async #fromPool(trips: TripModel, relaxed: Relaxed, sure: number): Promise<void> {
    if (
      Number.isFinite(this.below) &&
      this.below - sure - relaxed.worth.floor < grainsPerMinor * 200
    )
      return;
    const { program, read } = cutProgram(trips.model, relaxed.patterns);
    const solution = await this.#options.solve(program, { seconds: 1, gap: 1 });
    if (solution.values.length > 0) this.#offer(trips, read(solution.values));
  }

  async #near(
    trips: TripModel,
    relaxed: Relaxed,
    lossAtMost: number,
  ): Promise<readonly (readonly Pattern[])[] | undefined> {
    if (!Number.isFinite(lossAtMost)) return undefined;
    const lists: (readonly Pattern[])[] = [];
    for (const [part, own] of trips.model.parts.entries()) {
      const options = { worth: relaxed.worth, part, lossAtMost, patternsAtMost, alone: false };
      const near = nearPatterns(own, options);
      await this.#options.pacer.spend(near?.steps ?? 1e6);
      if (!near) return undefined;
      lists.push(gathered(near.patterns).map((use) => use.pattern));
    }
    return lists;
  }

  #offer(trips: TripModel, found: ReturnType<ReturnType<typeof cutProgram>["read"]>): void {
    const { problem, ways, groups } = this.#given;
    if (!groups.every(({ part }, g) => isPlan(part, found.uses[g] ?? []))) return;
    const goods = trips.offers.filter((_, e) => (found.extras[e] ?? 0) > 0);
    const basket = { ways, groups, uses: found.uses, goods };
    this.#take({ basket, weighed: weigh(problem, basket) });
  }
}
