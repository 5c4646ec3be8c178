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
 * The cheapest way to cover a need with the price lines given, all of one yard: one line alone, or
 * two together (whole bags of the first, the rest of the second), or, where what the yard has of
 * each is too little, one after the other by price. Undefined where they do not cover it.
 */
export function cheapestPurchase(need: Need, lines: readonly PriceLine[]): Purchase | undefined {
  const candidates = lines.flatMap((line): Candidate[] => {
    const whole = sizesNeeded(need, line);
    return whole === undefined ? [] : [{ line, whole, unitCents: centsOf(line.price) }];
  });
  const divisible = need.kind === "volume" || need.kind === "count";
  const found = candidates.flatMap((candidate) => optional(alone(candidate)));
  if (divisible) {
    for (const first of candidates) {
      for (const second of candidates) {
        if (first !== second) found.push(...twoTogether(first, second));
      }
    }
    if (found.length === 0) found.push(...optional(oneAfterTheOther(candidates)));
  }
  return found.reduce<Purchase | undefined>(
    (best, purchase) => (best === undefined || cheaper(purchase, best) ? purchase : best),
    undefined,
  );
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

function purchaseOf(parts: readonly { candidate: Candidate; count: number }[]): Purchase {
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

/** Some of the first, never more than is needed, and the rest of the second. */
function twoTogether(first: Candidate, second: Candidate): Purchase[] {
  const { step, limit = Infinity, from } = first.line;
  const most = stepsDown(Math.min(first.whole, limit), step);
  const found: Purchase[] = [];
  for (const count of [most, most - step, most - 2 * step]) {
    if (count < Math.max(from, step) - 1e-9) continue;
    const rest = second.whole * (1 - count / first.whole);
    const other = takes(second, rest < 1e-9 ? 0 : rest);
    if (other === undefined) continue;
    found.push(
      purchaseOf([
        { candidate: first, count },
        { candidate: second, count: other },
      ]),
    );
  }
  return found;
}

/** As much as there is of the cheapest, then of the next. */
function oneAfterTheOther(candidates: readonly Candidate[]): Purchase | undefined {
  const byPrice = [...candidates].sort((a, b) => a.unitCents * a.whole - b.unitCents * b.whole);
  const parts: { candidate: Candidate; count: number }[] = [];
  let left = 1;
  for (const candidate of byPrice) {
    const all = takes(candidate, left * candidate.whole);
    if (all !== undefined) return purchaseOf([...parts, { candidate, count: all }]);
    const { limit = 0, step, from } = candidate.line;
    const count = stepsDown(limit, step);
    if (count < from) continue;
    parts.push({ candidate, count });
    left -= count / candidate.whole;
  }
  return undefined;
}
