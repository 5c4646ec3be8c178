import { centsOf, wholeCents } from "./cents.ts";
import type { Need } from "./need.ts";
import type { PriceLine } from "./price-line.ts";
import { sizesNeeded } from "./sizes-needed.ts";

/** So many sizes of a price line. */
export interface PurchasePart {
  readonly line: PriceLine;
  readonly count: number;
}

/** What is bought to cover a need at one yard. */
export interface Purchase {
  readonly parts: readonly PurchasePart[];
  /** Sum of the parts, each rounded to the minor unit. */
  readonly cents: number;
}

interface Candidate {
  readonly line: PriceLine;
  /** Sizes that cover the whole need. */
  readonly whole: number;
  readonly unitCents: number;
}

/**
 * The cheapest way to cover a need with the price lines given, all of one yard: any number of sizes
 * of each line, as it is sold. Undefined where they do not cover it.
 */
export function cheapestPurchase(need: Need, lines: readonly PriceLine[]): Purchase | undefined {
  const candidates = lines.flatMap((line): Candidate[] => {
    const whole = sizesNeeded(need, line);
    return whole === undefined ? [] : [{ line, whole, unitCents: centsOf(line.price) }];
  });
  const divisible = need.kind === "volume" || need.kind === "count";
  const found = candidates.flatMap((candidate) => optional(alone(candidate)));
  const best = found.reduce<Purchase | undefined>(
    (taken, purchase) => (taken === undefined || cheaper(purchase, taken) ? purchase : taken),
    undefined,
  );
  return divisible && candidates.length > 1 ? together(candidates, best) : best;
}

const optional = <T>(value: T | undefined): T[] => (value === undefined ? [] : [value]);

function cheaper(a: Purchase, b: Purchase): boolean {
  return a.cents < b.cents || (a.cents === b.cents && sizesIn(a) < sizesIn(b));
}

const sizesIn = (purchase: Purchase): number =>
  purchase.parts.reduce((sum, part) => sum + part.count, 0);

const stepsUp = (count: number, step: number): number => {
  const steps = count / step;
  return Number((Math.ceil(steps - 1e-9 * Math.max(1, steps)) * step).toPrecision(15));
};
const stepsDown = (count: number, step: number): number =>
  Number((Math.floor(count / step + 1e-9) * step).toPrecision(15));

/** Sizes to take so that `count` of them are covered, or undefined where the yard has fewer. */
function takes({ line }: Candidate, count: number): number | undefined {
  if (count <= 0) return 0;
  const taken = stepsUp(Math.max(count, line.from), line.step);
  return line.limit !== undefined && taken > stepsDown(line.limit, line.step) + 1e-9
    ? undefined
    : taken;
}

function purchaseOf(parts: readonly Taken[]): Purchase {
  const taken = parts.filter(({ count }) => count > 0);
  return {
    parts: taken.map(({ candidate, count }) => ({ line: candidate.line, count })),
    cents: taken.reduce((sum, part) => sum + wholeCents(part.candidate.unitCents * part.count), 0),
  };
}

function alone(candidate: Candidate): Purchase | undefined {
  const count = takes(candidate, candidate.whole);
  return count === undefined ? undefined : purchaseOf([{ candidate, count }]);
}

interface Taken {
  readonly candidate: Candidate;
  readonly count: number;
}

const mostLooks = 20_000;

/**
 * The cheapest of all ways to put lines together. Lines come by what the whole need would cost of
 * each; a beginning is given up where even the cheapest line left would not save it.
 */
function together(
  candidates: readonly Candidate[],
  before: Purchase | undefined,
): Purchase | undefined {
  const rate = ({ unitCents, whole }: Candidate) => unitCents * whole;
  const order = [...candidates].sort((a, b) => rate(a) - rate(b));
  let best = before;
  let looks = 0;
  const go = (at: number, left: number, taken: readonly Taken[], cents: number): void => {
    if (left <= 1e-9) {
      const purchase = purchaseOf(taken);
      if (best === undefined || cheaper(purchase, best)) best = purchase;
      return;
    }
    const candidate = order[at];
    if (candidate === undefined || ++looks > mostLooks) return;
    // Each line is rounded by half a cent at most.
    const slack = order.length;
    const hopeless = (spent: number, rest: number, from: Candidate | undefined) =>
      best !== undefined && (from === undefined || spent + rest * rate(from) - slack > best.cents);
    if (hopeless(cents, left, candidate)) return;
    for (const count of countsOf(candidate, left)) {
      const rest = left - count / candidate.whole;
      const spent = cents + candidate.unitCents * count;
      if (rest > 1e-9 && hopeless(spent, rest, order[at + 1])) break;
      go(at + 1, Math.max(0, rest), [...taken, { candidate, count }], spent);
    }
    go(at + 1, left, taken, cents);
  };
  go(0, 1, [], 0);
  return best;
}

/** How many sizes of a line may be taken, the most that is of use first. */
function countsOf({ line, whole }: Candidate, left: number): number[] {
  const { step, from, limit = Infinity } = line;
  const useful = stepsUp(Math.max(left * whole, from, step), step);
  const most = Math.min(useful, stepsDown(limit, step));
  const counts: number[] = [];
  for (let count = most; count >= Math.max(from, step) - 1e-9; count -= step) {
    counts.push(Number(count.toPrecision(15)));
    if (counts.length >= mostCounts) break;
  }
  return counts;
}

const mostCounts = 400;
