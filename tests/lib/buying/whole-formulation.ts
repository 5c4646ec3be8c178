import type { BuyingProblem, Way, YardTerms } from "../../../lib/index.ts";
import {
  type BoardOffer,
  boardOffers,
  type GoodsOffer,
  goodsOffers,
  groupsOf,
  kindsOf,
} from "./offers.ts";
import { type Decision, Program } from "./program.ts";

/**
 * The buying problem as one integer programme, every way to cut every board written out: how often
 * each is used, how many boards of each line are bought, which yard is gone to or brings, how many
 * trips, which need is bought where. Shares nothing with the planner but the purchase of a need.
 */

export interface LeastOptions {
  /** How what the yards sell is had; yards not named are not used. Default: as is cheapest. */
  readonly ways?: ReadonlyMap<string, Way>;
  /** Whether offcuts are of pieces as short as allowed or of full length. Default: full. */
  readonly offcutsOf?: "leastU" | "fullU";
}

export interface Least {
  /** Needs that can't be had: first of all as few as possible. */
  readonly notSold: number;
  /** In units of 1/100,000 of the minor unit: goods with tax, delivery, trips, less worth of offcuts. */
  readonly hundredThousandths: number;
  readonly ways: ReadonlyMap<string, Way>;
  /** How many boards of each row of the stock, those no piece is cut from included. */
  readonly boards: ReadonlyMap<number, number>;
}

interface YardDecisions {
  readonly terms: YardTerms;
  readonly fetched: Decision;
  readonly delivered: Decision | undefined;
  readonly trips: Decision;
}

const centsOf = (money: { readonly si: number } | undefined): number =>
  Math.round((money?.si ?? 0) * 100);

class Formulation {
  readonly program = new Program();
  readonly bought: { offer: BoardOffer; count: Decision }[] = [];
  readonly goods: { offer: GoodsOffer; taken: Decision }[] = [];
  readonly missed: Decision[] = [];
  readonly yards: YardDecisions[];
  readonly #problem: BuyingProblem;
  readonly #used = new Map<string, { counts: readonly number[]; times: Decision }[]>();

  constructor(problem: BuyingProblem, { ways, offcutsOf = "fullU" }: LeastOptions) {
    this.#problem = problem;
    this.yards = problem.yards.map((terms) => this.#yard(terms, ways));
    for (const offer of boardOffers(problem, { offcutsOf })) this.#boards(offer);
    this.#pieces();
    const offers = goodsOffers(problem);
    problem.needs.forEach((_, need) => {
      this.#need(offers.filter((offer) => offer.need === need));
    });
    for (const yard of this.yards) this.#terms(yard);
  }

  /** How many cents one cent of goods there comes to. */
  #withTax(yard: string | null): number {
    const terms = this.#problem.yards.find((each) => each.yard === yard);
    return this.#problem.taxIncluded ? 1 : 1 + (terms?.tax ?? 0);
  }

  #yard(terms: YardTerms, ways: LeastOptions["ways"]): YardDecisions {
    const isOpen = (way: Way) => (ways === undefined || ways.get(terms.yard) === way ? 1 : 0);
    const isTaxed = terms.taxOn === "goods and delivery" && !this.#problem.taxIncluded;
    const fee = centsOf(terms.delivery) * (isTaxed ? 1 + terms.tax : 1);
    const fetched = this.program.decision(0, isOpen("fetched"));
    const delivered =
      terms.delivery === undefined ? undefined : this.program.decision(fee, isOpen("delivered"));
    const trips = this.program.decision(centsOf(terms.tripCost), 1000);
    const both = [fetched, ...(delivered ? [delivered] : [])];
    const chosen = ways?.has(terms.yard) ? { least: 1, most: 1 } : { most: 1 };
    this.program.row(
      both.map((way) => [1, way]),
      chosen,
    );
    this.program.row(
      [
        [1, trips],
        [-1, fetched],
      ],
      { least: 0 },
    );
    return { terms, fetched, delivered, trips };
  }

  #way(offer: { readonly yard: string | null; readonly way: Way }): Decision | undefined {
    return this.yards.find(({ terms }) => terms.yard === offer.yard)?.[offer.way];
  }

  #boards(offer: BoardOffer): void {
    const { program } = this;
    const { yard, cents, from, step, group, cuttings } = offer;
    const { offcuts, pieces } = this.#problem.boards;
    const centsPerUnit = offcuts === undefined ? 0 : (offcuts.worth.si * 100) / 320_000;
    const times = cuttings.map(({ counts, keptU }) => {
      const each = program.decision(-centsPerUnit * keptU);
      this.#used.set(group, [...(this.#used.get(group) ?? []), { counts, times: each }]);
      return each;
    });
    const used = times.map((each): [number, Decision] => [1, each]);
    if (yard === null) {
      program.row(used, { most: offer.most });
      return;
    }
    // More than all pieces are bought only for a price or an order.
    const enough = pieces.reduce((sum, { count }) => sum + count, 0) + from + step + 20;
    const most = Math.floor(Math.min(offer.most, enough) / step);
    const lots = program.decision(cents * step * this.#withTax(yard), most);
    const anyAtAll = program.decision(0, 1);
    const way = this.#way(offer);
    if (way)
      program.row(
        [
          [1, way],
          [-1, anyAtAll],
        ],
        { least: 0 },
      );
    program.row([...used, [-step, lots]], { most: 0 });
    program.row(
      [
        [step, lots],
        [-from, anyAtAll],
      ],
      { least: 0 },
    );
    program.row(
      [
        [step, lots],
        [-enough, anyAtAll],
      ],
      { most: 0 },
    );
    this.bought.push({ offer, count: lots });
  }

  /** Every piece is made. */
  #pieces(): void {
    for (const [group, pieces] of groupsOf(this.#problem)) {
      kindsOf(pieces, this.#problem).forEach(({ demand }, kind) => {
        const makers = (this.#used.get(group) ?? []).map(
          ({ counts, times }): [number, Decision] => [counts[kind] ?? 0, times],
        );
        const isExact = this.#problem.boards.offcuts !== undefined;
        this.program.row(makers, { least: demand, ...(isExact ? { most: demand } : {}) });
      });
    }
  }

  #need(offers: readonly GoodsOffer[]): void {
    const missed = this.program.decision(0, 1);
    const taken = offers.map((offer) => {
      const cost = offer.cents * this.#withTax(offer.yard);
      return { offer, taken: this.program.decision(cost, 1) };
    });
    for (const each of taken) {
      const way = this.#way(each.offer);
      if (way)
        this.program.row(
          [
            [1, way],
            [-1, each.taken],
          ],
          { least: 0 },
        );
    }
    const all = [missed, ...taken.map((each) => each.taken)];
    this.program.row(
      all.map((each) => [1, each]),
      { least: 1, most: 1 },
    );
    this.missed.push(missed);
    this.goods.push(...taken);
  }

  /** What is fetched goes on the car in so many trips; what is brought reaches the least order. */
  #terms({ terms, delivered, trips }: YardDecisions): void {
    const here = (way: Way) => [
      ...this.bought
        .filter(({ offer }) => offer.yard === terms.yard && offer.way === way)
        .map(({ offer, count }) => ({ offer, count, lot: offer.step })),
      ...this.goods
        .filter(({ offer }) => offer.yard === terms.yard && offer.way === way)
        .map(({ offer, taken }) => ({ offer, count: taken, lot: 1 })),
    ];
    const payload = (terms.payload ?? this.#problem.carPayload)?.si;
    if (payload !== undefined) {
      const masses = here("fetched").map(({ offer, count, lot }): [number, Decision] => [
        -(offer.massKg * lot) / payload,
        count,
      ]);
      this.program.row([[1, trips], ...masses], { least: 0 });
    }
    if (delivered === undefined || terms.deliveryFrom === undefined) return;
    const sums = here("delivered").map(({ offer, count, lot }): [number, Decision] => [
      offer.cents * lot,
      count,
    ]);
    this.program.row([...sums, [-centsOf(terms.deliveryFrom), delivered]], { least: 0 });
  }

  /** As few needs unsold as possible, and then the least cost. */
  async least(): Promise<Least | undefined> {
    const certain = new Set(
      this.goods.flatMap(({ offer }) => {
        const isOpen = offer.way === "fetched" && this.#way(offer)?.most === 1;
        return isOpen ? [offer.need] : [];
      }),
    );
    const isCertain = certain.size === this.#problem.needs.length;
    const fewest = isCertain ? undefined : await this.program.least(this.missed);
    if (!isCertain && fewest === undefined) return undefined;
    const notSold = this.missed.reduce((sum, each) => sum + (fewest?.of(each) ?? 0), 0);
    this.program.row(
      this.missed.map((each) => [1, each]),
      { most: notSold },
    );
    const found = await this.program.least();
    if (found === undefined) return undefined;
    const { of, hundredThousandths } = found;
    const ways = this.yards.flatMap(({ terms, fetched, delivered }): [string, Way][] => {
      if (of(fetched) === 1) return [[terms.yard, "fetched"]];
      return delivered && of(delivered) === 1 ? [[terms.yard, "delivered"]] : [];
    });
    const boards = this.bought.flatMap(({ offer, count }): [number, number][] =>
      of(count) > 0 ? [[offer.row, of(count) * offer.step]] : [],
    );
    return { notSold, hundredThousandths, ways: new Map(ways), boards: new Map(boards) };
  }
}

/** The least that all of a buying problem can cost; undefined where there is no plan at all. */
export function leastBuying(
  problem: BuyingProblem,
  options: LeastOptions = {},
): Promise<Least | undefined> {
  return new Formulation(problem, options).least();
}
