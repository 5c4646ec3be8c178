import type { CutModel, Extra, Link, Worth } from "../cutting/cut-model.ts";
import type { CuttingGroup } from "../lumber/make-groups.ts";
import { centsOfKind, kgOfKind, yardOfKind } from "./basket.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import type { GoodsOffer } from "./goods-offers.ts";
import { deliveryGrains, leastOrderCents, payloadKg, tripGrains } from "./tariff.ts";
import type { YardWay } from "./ways.ts";

/** How many trips are made to each yard: between these, both included. */
export interface TripRange {
  readonly least: readonly number[];
  readonly most: readonly number[];
}

/** What everything together is planned from: boards, goods and trips in one model. */
export interface TripModel {
  readonly model: CutModel;
  /** The offers that extras stand for, first; then trips beyond the least. */
  readonly offers: readonly GoodsOffer[];
  /** Yards whose further trips are extras, in order. */
  readonly tripYards: readonly number[];
  /** What each link says, for a certificate. */
  readonly linkWords: readonly string[];
  /** What each extra is, for a certificate. */
  readonly extraWords: readonly string[];
  /** The trips and deliveries that are paid in any case. */
  readonly sure: readonly { readonly what: string; readonly grains: number }[];
}

const manyTrips = 1000;

class Builder {
  readonly links: { is: Link["is"]; amount: number; boards: number[][] }[] = [];
  readonly words: string[] = [];
  readonly #groups: readonly CuttingGroup[];

  constructor(groups: readonly CuttingGroup[]) {
    this.#groups = groups;
  }

  link(
    is: Link["is"],
    amount: number,
    of: { words: string; board?: (g: number, k: number) => number },
  ): number {
    const board = of.board ?? (() => 0);
    this.words.push(of.words);
    const boards = this.#groups.map((group, g) => group.kinds.map((_, k) => board(g, k)));
    return this.links.push({ is, amount, boards }) - 1;
  }
}

/** Boards, goods and trips as one model: a car takes no more than it can, an order is large enough. */
export function tripModel(
  problem: BuyingProblem,
  given: {
    readonly ways: readonly YardWay[];
    readonly groups: readonly CuttingGroup[];
    readonly offers: readonly (readonly GoodsOffer[])[];
    readonly trips: TripRange;
  },
): TripModel {
  const { ways, groups, trips } = given;
  const builder = new Builder(groups);
  const bought = given.offers.filter((own) => own.length > 0);
  const needLinks = bought.map((own) =>
    builder.link("equal", 1, { words: `${own[0]?.need.item}, where it costs least` }),
  );
  const atYard = (at: number, worth: (group: CuttingGroup, k: number) => number) => {
    return (g: number, k: number): number => {
      const group = groups[g];
      const kind = group?.kinds[k];
      if (!group || !kind || yardOfKind(problem, ways, kind) !== at) return 0;
      return worth(group, k);
    };
  };
  const kgOf = (group: CuttingGroup, k: number) => {
    const kind = group.kinds[k];
    return kind ? kgOfKind(problem, group, kind) : 0;
  };
  const loads = ways.map((yardWay, at) => {
    const payload = payloadKg(yardWay, problem);
    if (!Number.isFinite(payload)) return -1;
    const sure = payload * (trips.least[at] ?? 1);
    const words = `what the sure trips to ${yardWay.terms.yard} carry`;
    return builder.link("most", sure, { words, board: atYard(at, kgOf) });
  });
  const orders = ways.map((yardWay, at) => {
    const least = leastOrderCents(yardWay);
    if (least === 0) return -1;
    const cents = (group: CuttingGroup, k: number) => {
      const kind = group.kinds[k];
      return kind ? centsOfKind(problem, kind) : 0;
    };
    const words = `the least order at ${yardWay.terms.yard}`;
    return builder.link("least", least, { words, board: atYard(at, cents) });
  });
  const extras: Extra[] = [];
  const extraWords: string[] = [];
  const add = (words: string, extra: { cost: number; most: number; rows: [number, number][] }) => {
    const links = builder.links.map((_, r) => {
      const own = extra.rows.filter(([row]) => row === r);
      return own.reduce((sum, [, amount]) => sum + amount, 0);
    });
    extraWords.push(words);
    extras.push({ cost: extra.cost, most: extra.most, links });
  };
  for (const [n, own] of bought.entries()) {
    for (const { at, grains, kg, purchase, need } of own) {
      const rows: [number, number][] = [
        [needLinks[n] ?? -1, 1],
        [loads[at] ?? -1, kg],
        [orders[at] ?? -1, purchase.cents],
      ];
      add(`${need.item} at ${ways[at]?.terms.yard}`, { cost: grains, most: 1, rows });
    }
  }
  const tripYards: number[] = [];
  for (const [at, yardWay] of ways.entries()) {
    const more = Math.min(manyTrips, (trips.most[at] ?? 1) - (trips.least[at] ?? 1));
    const load = loads[at] ?? -1;
    if (load < 0 || more <= 0) continue;
    const { yard } = yardWay.terms;
    tripYards.push(at);
    // The relaxed programme has no upper limits of its own.
    const limit = more < manyTrips ? builder.link("most", more, { words: `trips to ${yard}` }) : -1;
    const rows: [number, number][] = [
      [load, -payloadKg(yardWay, problem)],
      [limit, 1],
    ];
    add(`further trips to ${yard}`, { cost: tripGrains(yardWay.terms), most: more, rows });
  }
  const width = builder.links.length;
  const even = extras.map((extra) => ({
    ...extra,
    links: Array.from({ length: width }, (_, r) => extra.links[r] ?? 0),
  }));
  const sure = ways.map(({ terms, way }, at) => {
    if (way === "delivered")
      return { what: `delivery by ${terms.yard}`, grains: deliveryGrains(terms, problem) };
    const count = trips.least[at] ?? 1;
    return { what: `trips to ${terms.yard}: ${count}`, grains: tripGrains(terms) * count };
  });
  return {
    model: { parts: groups.map((group) => group.part), links: builder.links, extras: even },
    offers: bought.flat(),
    tripYards,
    linkWords: builder.words,
    extraWords,
    sure,
  };
}

/** The parts of a floor besides pieces and boards, in words. */
export function floorParts(
  { model, linkWords, extraWords }: TripModel,
  worth: Worth,
): { what: string; grains: number }[] {
  const links = model.links.map((link, r) => ({
    what: linkWords[r] ?? "",
    grains: (worth.links[r] ?? 0) * link.amount,
  }));
  const extras = model.extras.map((extra, e) => {
    const price = extra.links.reduce(
      (sum, amount, r) => sum - (worth.links[r] ?? 0) * amount,
      extra.cost,
    );
    return { what: extraWords[e] ?? "", grains: Math.min(0, price) * extra.most };
  });
  return [...links, ...extras].filter(({ grains }) => Math.abs(grains) >= 1);
}
