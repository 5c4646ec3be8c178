import { aloneModel, type CutModel, type Worth } from "./cut-model.ts";
import { type CutPart, isEndless, restGrains } from "./cut-part.ts";
import type { Fillings, FillingTable } from "./filling-table.ts";

/** What a relaxed programme says rows are worth, in grains. */
export interface RawWorth {
  readonly values: readonly (readonly number[])[];
  readonly links: readonly number[];
  readonly breaks: readonly (readonly number[])[];
}

/** A row that holds on one side only is worth nothing on the other. */
function onItsSide(model: CutModel, links: readonly number[]): number[] {
  return links.map((worth, i) => {
    const is = model.links[i]?.is;
    return is === "least" ? Math.max(0, worth) : is === "most" ? Math.min(0, worth) : worth;
  });
}

/** What boards cost with links and breaks counted. */
export function pricesOf(
  model: CutModel,
  links: readonly number[],
  breaks: readonly (readonly number[])[],
): number[][] {
  return model.parts.map((part, p) =>
    part.kinds.map((kind, k) => {
      let price = kind.cost - (breaks[p]?.[k] ?? 0);
      for (const [r, link] of model.links.entries()) {
        price -= (links[r] ?? 0) * (link.boards[p]?.[k] ?? 0);
      }
      return price;
    }),
  );
}

/** The share that values must be scaled down to, so that no board without limit yields its price. */
function scaleFor(
  part: CutModel["parts"][number],
  values: readonly number[],
  of: { readonly prices: readonly number[]; readonly fillings: Fillings },
): number {
  let scale = 1;
  for (const [k, kind] of part.kinds.entries()) {
    const price = Math.max(0, of.prices[k] ?? 0);
    const over = of.fillings.worthOf(k) - price;
    if (!isEndless(kind) || over <= 0) continue;
    // Only the pieces can be valued less: what the rest is worth is given.
    const counts = of.fillings.countsOf(k);
    const pieces = counts.reduce((sum, count, i) => sum + count * (values[i] ?? 0), 0);
    const most = part.rests === null ? of.fillings.worthOf(k) : pieces;
    if (most > 0) scale = Math.min(scale, Math.max(0, (most - over) / most));
  }
  return scale;
}

const mostRounds = 12;

/** The floor under every plan that follows from such values, as far as it can be counted on. */
export function floorOf(model: CutModel, worth: Omit<Worth, "floor">): number {
  let floor = 0;
  for (const [p, part] of model.parts.entries()) {
    const pieces = part.classes.reduce((sum, each) => sum + each.demand, 0);
    for (const [i, each] of part.classes.entries()) {
      floor += (worth.values[p]?.[i] ?? 0) * each.demand;
    }
    for (const [k, kind] of part.kinds.entries()) {
      const over = (worth.fillings[p]?.[k] ?? 0) - (worth.prices[p]?.[k] ?? 0);
      // Every board used carries a piece, so there are never more boards than pieces, but for those a
      // price break asks for.
      if (over > 0) floor -= over * Math.min(kind.supply, Math.max(pieces, kind.least));
      floor += (worth.breaks[p]?.[k] ?? 0) * kind.least;
    }
  }
  for (const [r, link] of model.links.entries()) floor += (worth.links[r] ?? 0) * link.amount;
  for (const extra of model.extras) {
    let price = extra.cost;
    for (const [r, amount] of extra.links.entries()) price -= (worth.links[r] ?? 0) * amount;
    if (price < 0) floor += price * extra.most;
  }
  return floor;
}

/** What price breaks give back, never so much that a board costs less than its rest would be worth. */
function breaksWithin(
  model: CutModel,
  links: readonly number[],
  raw: RawWorth["breaks"],
): number[][] {
  const none = model.parts.map((part) => part.kinds.map(() => 0));
  const prices = pricesOf(model, links, none);
  return model.parts.map((part, p) =>
    part.kinds.map((kind, k) => {
      const whole = kind.bought ? restGrains(part, kind.capacityU, 0) : 0;
      const most = Math.max(0, (prices[p]?.[k] ?? 0) - whole);
      return Math.min(most, Math.max(0, raw[p]?.[k] ?? 0));
    }),
  );
}

/**
 * Values that give a floor under every plan, from those of a relaxed programme: rounded down to
 * whole grains and scaled until no board without limit yields more than its price (Farley, 1990, on
 * the bound of Gilmore and Gomory).
 */
export function safeWorth(model: CutModel, tables: readonly FillingTable[], raw: RawWorth): Worth {
  const links = onItsSide(model, raw.links);
  const breaks = breaksWithin(model, links, raw.breaks);
  const prices = pricesOf(model, links, breaks);
  const values: number[][] = [];
  const allFillings: number[][] = [];
  for (const [p, part] of model.parts.entries()) {
    let own = (raw.values[p] ?? []).map((worth) => Math.max(0, Math.floor(worth + 1e-3)));
    let filled: number[] = [];
    for (let round = 0; round < mostRounds; round++) {
      const fillings = (tables[p] as FillingTable).fill(own);
      filled = part.kinds.map((_, k) => fillings.worthOf(k));
      const scale = scaleFor(part, own, { prices: prices[p] ?? [], fillings });
      if (scale >= 1) break;
      own = own.map((value) => Math.floor(value * scale));
    }
    values.push(own);
    allFillings.push(filled);
  }
  const worth = { values, links, breaks, prices, fillings: allFillings };
  return { ...worth, floor: floorOf(model, worth) };
}

/** The plainest values: every piece by its length, at the rate of the board that is cheapest by length. */
export function worthByLength(part: CutPart): Worth {
  const rates = part.kinds.flatMap((kind) =>
    kind.bought && kind.supply > 0 ? [kind.cost / kind.capacityU] : [],
  );
  const rate = rates.length > 0 && part.rests === null ? Math.min(...rates) : 0;
  const values = [part.classes.map((each) => Math.floor(each.leastU * rate))];
  const fillings = [part.kinds.map((kind) => kind.capacityU * rate)];
  const prices = [part.kinds.map((kind) => kind.cost)];
  const breaks = [part.kinds.map(() => 0)];
  const worth = { values, links: [], breaks, prices, fillings };
  return { ...worth, floor: floorOf(aloneModel(part), worth) };
}
