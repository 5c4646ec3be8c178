import type { CutModel, Worth } from "./cut-model.ts";
import {
  type CutPart,
  grainsPerMinor,
  isEndless,
  leastSizes,
  longestU,
  type Pattern,
  patternKey,
} from "./cut-part.ts";
import { type FillingTable, fillingTable } from "./filling-table.ts";
import type { Pacer } from "./pacer.ts";
import { fits, patternCost } from "./pattern-cost.ts";
import { floorOf, pricesOf, type RawWorth, safeWorth } from "./safe-worth.ts";
import { type LpRow, Simplex } from "./simplex.ts";

/** The plan in which boards may be cut in parts of boards: a floor, and patterns worth having. */
export interface Relaxed {
  /** By part. */
  readonly patterns: readonly (readonly Pattern[])[];
  /** How many boards are cut by each pattern. */
  readonly shares: readonly (readonly number[])[];
  /** How much of each other decision. */
  readonly extras: readonly number[];
  readonly worth: Worth;
  /** What it costs, in grains. */
  readonly cost: number;
  /** Whether there is any such plan. */
  readonly feasible: boolean;
}

/** Where the rows of a part begin, and which rows its kinds have. */
interface Places {
  readonly classes: number;
  /** Row of the limit of each kind; -1 where it has none. */
  readonly limits: readonly number[];
  /** Row of the least number of each kind; -1 where it has none. */
  readonly leasts: readonly number[];
}

interface Layout {
  readonly rows: readonly LpRow[];
  readonly parts: readonly Places[];
  readonly links: number;
}

function layoutOf(model: CutModel): Layout {
  const rows: LpRow[] = [];
  const add = (is: LpRow["is"], amount: number) => rows.push({ is, amount }) - 1;
  const parts = model.parts.map((part): Places => {
    const classes = rows.length;
    for (const each of part.classes) add("least", each.demand);
    const limits = part.kinds.map((kind) =>
      Number.isFinite(kind.supply) ? add("most", kind.supply) : -1,
    );
    const leasts = part.kinds.map((kind) => (kind.least > 0 ? add("least", kind.least) : -1));
    return { classes, limits, leasts };
  });
  const links = rows.length;
  for (const { is, amount } of model.links) add(is, amount);
  return { rows, parts, links };
}

/** The cheapest kinds that hold a piece of each class, so that there is a first solution. */
function startPatterns(part: CutPart, sizesU: readonly number[]): Pattern[] {
  return sizesU.flatMap((sizeU, i) => {
    const demand = part.classes[i]?.demand ?? 0;
    if (demand === 0) return [];
    const ways = part.kinds.flatMap((kind, k) => {
      const n = Math.min(demand, Math.floor(longestU(kind) / sizeU));
      if (n === 0) return [];
      const counts = sizesU.map((_, at) => (at === i ? n : 0));
      return [
        { pattern: { kind: k, counts }, rate: kind.cost / n, scarce: kind.supply < demand / n },
      ];
    });
    ways.sort((a, b) => Number(a.scarce) - Number(b.scarce) || a.rate - b.rate);
    const [best] = ways;
    return best ? [best.pattern] : [];
  });
}

/** How far columns are generated. */
export interface RelaxOptions {
  readonly pacer: Pacer;
  /** Patterns to begin with, by part. */
  readonly start?: readonly (readonly Pattern[])[];
  /** Rounds of making new patterns. Default: until no more pay. */
  readonly rounds?: number;
  /** Sizes of the pieces, by part. Default: the least that will do. */
  readonly sizesU?: readonly (readonly number[])[];
  /** It may stop where floor and cost are this near, in grains. Default: a hundredth of a minor unit. */
  readonly near?: number;
}

/** Generates patterns as they are needed, over all parts of a model at once. */
class Generation {
  readonly model: CutModel;
  readonly layout: Layout;
  readonly lp: Simplex;
  readonly pools: Pattern[][];
  readonly keys = new Set<string>();
  readonly #placeOf: [part: number, at: number][] = [];
  readonly #sizesU: readonly (readonly number[])[];

  constructor(model: CutModel, sizesU: readonly (readonly number[])[]) {
    this.model = model;
    this.#sizesU = sizesU;
    this.layout = layoutOf(model);
    const dearest = Math.max(
      1,
      ...model.parts.flatMap((part) => part.kinds.map((kind) => kind.cost)),
      ...model.extras.map((extra) => extra.cost),
    );
    this.lp = new Simplex(this.layout.rows, (1000 * dearest) / grainsPerMinor);
    this.pools = model.parts.map(() => []);
    for (const extra of model.extras) {
      const used = extra.links.flatMap((amount, r) => (amount === 0 ? [] : [r]));
      this.lp.add({
        cost: extra.cost / grainsPerMinor,
        rows: used.map((r) => this.layout.links + r),
        amounts: used.map((r) => extra.links[r] ?? 0),
      });
    }
  }

  /** Adds a pattern that is new and fits. */
  add(p: number, pattern: Pattern): boolean {
    const part = this.model.parts[p];
    const kind = part?.kinds[pattern.kind];
    const key = `${p} ${patternKey(pattern)}`;
    if (!part || !kind || kind.supply < 1 || this.keys.has(key)) return false;
    if (!pattern.counts.some((count) => count > 0)) return false;
    if (!fits(part, pattern, this.#sizesU[p] ?? [])) return false;
    this.keys.add(key);
    const places = this.layout.parts[p] as Places;
    const rows: number[] = [];
    const amounts: number[] = [];
    const put = (row: number, amount: number) => {
      if (row < 0 || amount === 0) return;
      rows.push(row);
      amounts.push(amount);
    };
    for (const [i, count] of pattern.counts.entries()) put(places.classes + i, count);
    put(places.limits[pattern.kind] ?? -1, 1);
    put(places.leasts[pattern.kind] ?? -1, 1);
    for (const [r, link] of this.model.links.entries()) {
      put(this.layout.links + r, link.boards[p]?.[pattern.kind] ?? 0);
    }
    this.lp.add({ cost: patternCost(part, pattern) / grainsPerMinor, rows, amounts });
    this.#placeOf.push([p, (this.pools[p] as Pattern[]).push(pattern) - 1]);
    return true;
  }

  raw(): RawWorth {
    const worth = this.lp.rowWorth();
    const at = (row: number) => (row < 0 ? 0 : (worth[row] ?? 0) * grainsPerMinor);
    return {
      values: this.model.parts.map((part, p) =>
        part.classes.map((_, i) => Math.max(0, at((this.layout.parts[p]?.classes ?? 0) + i))),
      ),
      links: this.model.links.map((_, r) => at(this.layout.links + r)),
      breaks: this.model.parts.map((part, p) =>
        part.kinds.map((_, k) => Math.max(0, at(this.layout.parts[p]?.leasts[k] ?? -1))),
      ),
    };
  }

  /** What the relaxed programme says a limit takes off each board's worth, in minor units. */
  limitWorth(p: number, k: number): number {
    const row = this.layout.parts[p]?.limits[k] ?? -1;
    return row < 0 ? 0 : Math.max(0, -this.lp.worthOf(row));
  }

  shares(): { patterns: number[][]; extras: number[] } {
    const all = this.lp.shares();
    const extras = all.slice(0, this.model.extras.length);
    const patterns = this.pools.map((pool) => pool.map(() => 0));
    for (const [n, [p, at]] of this.#placeOf.entries()) {
      (patterns[p] as number[])[at] = all[this.model.extras.length + n] ?? 0;
    }
    return { patterns, extras };
  }
}

/** A floor that holds but for roundings, from one filling of the tables. */
function nearFloor(
  model: CutModel,
  raw: RawWorth,
  fillings: readonly (readonly number[])[],
): number {
  const prices = pricesOf(model, raw.links, raw.breaks);
  let scale = 1;
  for (const [p, part] of model.parts.entries()) {
    for (const [k, kind] of part.kinds.entries()) {
      const [price = 0, filling = 0] = [prices[p]?.[k], fillings[p]?.[k]];
      if (isEndless(kind) && filling > Math.max(0, price)) {
        scale = Math.min(scale, Math.max(0, price) / filling);
      }
    }
  }
  const scaled = (lists: readonly (readonly number[])[]) =>
    lists.map((list) => list.map((value) => value * scale));
  const { links, breaks } = raw;
  const worth = { values: scaled(raw.values), fillings: scaled(fillings), links, breaks, prices };
  return floorOf(model, worth);
}

const workOf = (generation: Generation, tables: readonly FillingTable[]): number =>
  tables.reduce((sum, table) => sum + table.cells / 2, 0) + generation.layout.rows.length ** 2 * 8;

/** Solves the relaxed programme, making patterns as they pay. */
export async function relax(model: CutModel, options: RelaxOptions): Promise<Relaxed> {
  const { pacer, start, rounds = 2000, near = grainsPerMinor / 100 } = options;
  const sizesU = options.sizesU ?? model.parts.map(leastSizes);
  const tables = model.parts.map((part, p) => fillingTable(part, sizesU[p] ?? []));
  const generation = new Generation(model, sizesU);
  for (const [p, part] of model.parts.entries()) {
    for (const pattern of startPatterns(part, sizesU[p] ?? [])) generation.add(p, pattern);
    for (const pattern of start?.[p] ?? []) generation.add(p, pattern);
  }
  let best: RawWorth | undefined;
  let floor = Number.NEGATIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    if (!generation.lp.optimise()) break;
    await pacer.spend(workOf(generation, tables));
    const raw = generation.raw();
    const { fillings, grown } = improve(generation, raw, tables);
    const here = nearFloor(model, raw, fillings);
    if (best === undefined || here > floor) [best, floor] = [raw, here];
    if (!grown) break;
    const cost = generation.lp.cost() * grainsPerMinor;
    if (generation.lp.isFeasible() && cost - floor < near) break;
  }
  const { patterns, extras } = generation.shares();
  return {
    patterns: generation.pools,
    shares: patterns,
    extras,
    worth: safeWorth(model, tables, best ?? generation.raw()),
    cost: generation.lp.cost() * grainsPerMinor,
    feasible: generation.lp.isFeasible(),
  };
}

/** Adds the best filling of every kind that is worth more than its board. */
function improve(generation: Generation, raw: RawWorth, tables: readonly FillingTable[]) {
  const prices = pricesOf(generation.model, raw.links, raw.breaks);
  let grown = false;
  const fillings = generation.model.parts.map((part, p) => {
    const filled = tables[p]?.fill(raw.values[p] ?? []);
    return part.kinds.map((kind, k) => {
      if (!filled || kind.supply < 1) return 0;
      const worth = filled.worthOf(k);
      const price = (prices[p]?.[k] ?? 0) + generation.limitWorth(p, k) * grainsPerMinor;
      if (worth > price + 1e-7 * Math.max(grainsPerMinor, price)) {
        if (generation.add(p, { kind: k, counts: filled.countsOf(k) })) grown = true;
      }
      return worth;
    });
  });
  return { fillings, grown };
}
