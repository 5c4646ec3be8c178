import type { Worth } from "./cut-model.ts";
import { type CutPart, isPlain, leastSizes, type Pattern, restGrains } from "./cut-part.ts";
import { tableUnit } from "./filling-table.ts";
import { fits, patternRest } from "./pattern-cost.ts";

/** Which patterns to list. */
export interface NearOptions {
  readonly worth: Worth;
  /** The part's place in the model. */
  readonly part: number;
  /** How much a pattern may lose at most, in grains. */
  readonly lossAtMost: number;
  readonly patternsAtMost: number;
  /** Whether a longer board that costs no more may stand in for a shorter one. */
  readonly alone: boolean;
  readonly stepsAtMost?: number;
}

const mostSteps = 3e6;

/** For every class on and every length, the most that pieces of that class and the smaller ones are worth. */
function worthAhead(
  part: CutPart,
  sizesU: readonly number[],
  values: readonly number[],
): { readonly of: (from: number, roomU: number) => number; readonly cells: number } {
  const longestU = Math.max(0, ...part.kinds.map((kind) => kind.capacityU));
  const { unit, coarse } = tableUnit(sizesU, sizesU.length + 1, longestU);
  const columns = coarse ? Math.ceil(longestU / unit) : Math.floor(longestU / unit);
  const width = columns + 1;
  const table = new Float64Array((sizesU.length + 1) * width);
  for (let i = sizesU.length - 1; i >= 0; i--) {
    const own = i * width;
    table.copyWithin(own, own + width, own + 2 * width);
    const sizeT = Math.floor((sizesU[i] as number) / unit);
    const value = values[i] ?? 0;
    if (value <= 0 || sizeT === 0) continue;
    let left = Math.min(part.classes[i]?.demand ?? 0, Math.floor(columns / sizeT));
    for (let lot = 1; left > 0; lot *= 2) {
      const take = Math.min(lot, left);
      const [size, worth] = [sizeT * take, value * take];
      for (let at = columns; at >= size; at--) {
        const withLot = (table[own + at - size] as number) + worth;
        if (withLot > (table[own + at] as number)) table[own + at] = withLot;
      }
      left -= take;
    }
  }
  const toTable = coarse
    ? (roomU: number) => Math.ceil(roomU / unit)
    : (roomU: number) => Math.floor(roomU / unit);
  return {
    of: (from, roomU) => table[from * width + toTable(roomU)] as number,
    cells: table.length,
  };
}

/** The longest board without limit, break or bundle that costs no more than this one, shorter than it. */
function replacedUpToU(part: CutPart, k: number): number {
  const kind = part.kinds[k];
  if (!kind?.bought) return -1;
  return Math.max(
    -1,
    ...part.kinds
      .filter(
        (other, t) =>
          t !== k &&
          other.supply === Number.POSITIVE_INFINITY &&
          isPlain(other) &&
          other.partsU === null &&
          other.cost <= kind.cost &&
          other.capacityU < kind.capacityU,
      )
      .map((other) => other.capacityU),
  );
}

/** What was listed. */
export interface NearList {
  readonly patterns: readonly Pattern[];
  readonly steps: number;
}

/**
 * All patterns that lose no more than so much, or undefined where there are too many. Any plan costs
 * the floor and the losses of its boards, so a plan within that much of the floor has no others.
 * Where rests are worth nothing only full patterns are listed: one more piece never loses more.
 */
export function nearPatterns(part: CutPart, options: NearOptions): NearList | undefined {
  const { worth, lossAtMost, patternsAtMost, alone, stepsAtMost = mostSteps } = options;
  const sizesU = leastSizes(part);
  const values = worth.values[options.part] ?? [];
  const ahead = worthAhead(part, sizesU, values);
  const smallestU = sizesU[sizesU.length - 1] ?? 0;
  const found: Pattern[] = [];
  const counts = sizesU.map(() => 0);
  let steps = ahead.cells / 20;
  let over = false;
  const onlyFull = part.rests === null;

  for (const [k, kind] of part.kinds.entries()) {
    if (kind.supply < 1) continue;
    const price = worth.prices[options.part]?.[k] ?? 0;
    const filling = worth.fillings[options.part]?.[k] ?? 0;
    const needed = Math.max(price, filling) - lossAtMost - 1e-3;
    const plain = alone && onlyFull && isPlain(kind);
    const emptyU = plain ? kind.capacityU - replacedUpToU(part, k) : Number.POSITIVE_INFINITY;
    const whole = kind.partsU === null;
    // What the rest of a board cut in two can be worth is bounded by that of the whole board.
    const restWorth = (roomU: number) =>
      kind.bought ? restGrains(part, roomU + (whole ? 0 : part.kerfU), 0) : 0;
    const isFull = (leftU: number) =>
      sizesU.every(
        (sizeU, i) => sizeU > leftU || (counts[i] ?? 0) >= (part.classes[i]?.demand ?? 0),
      );
    const take = (leftU: number, value: number): void => {
      if (leftU >= emptyU || leftU === kind.capacityU) return;
      if (onlyFull && whole && !isFull(leftU)) return;
      const pattern = { kind: k, counts: counts.slice() };
      if (!whole && !fits(part, pattern, sizesU)) return;
      if (!onlyFull && value + patternRest(part, pattern) < needed) return;
      found.push(pattern);
      if (found.length > patternsAtMost) over = true;
    };
    const go = (i: number, leftU: number, value: number): void => {
      if (over) return;
      if (++steps > stepsAtMost) {
        over = true;
        return;
      }
      if (i === sizesU.length || leftU < smallestU) {
        if (value + restWorth(leftU) >= needed) take(leftU, value);
        return;
      }
      if (value + ahead.of(i, leftU) + restWorth(leftU) < needed) return;
      const sizeU = sizesU[i] as number;
      const most = Math.min(part.classes[i]?.demand ?? 0, Math.floor(leftU / sizeU));
      for (let n = most; n >= 0; n--) {
        counts[i] = n;
        go(i + 1, leftU - n * sizeU, value + n * (values[i] ?? 0));
      }
      counts[i] = 0;
    };
    go(0, kind.capacityU, 0);
    if (over) return undefined;
  }
  return { patterns: found, steps };
}
