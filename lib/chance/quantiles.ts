import { Given } from "../measure/given.ts";

/** A spread of figures in three: a tenth lies below `low`, half below `likely`, nine tenths below `high`. */
export interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/**
 * The figures below which given shares of some values lie. Between two values it is taken in
 * proportion, the least value standing for 0 and the greatest for 1.
 *
 * @param values one or more finite numbers, in any order.
 * @param shares each 0 to 1.
 * @returns a figure for each share.
 * @throws ProblemError where there is no value, or a value or share is no number or out of range.
 * @rule share p lies at the place 1 + (n - 1) p of the sorted values (definition 7 of Hyndman and Fan)
 * @source hyndman-fan-1996
 * @example
 * quantilesOf([7, 1, 3, 5], [0, 0.25, 0.5, 1]) // => [1,2.5,4,7]
 */
export function quantilesOf(
  values: readonly number[] | Float64Array,
  shares: readonly number[],
): readonly number[] {
  const given = new Given();
  const list = values instanceof Float64Array ? [...values] : given.list(values, ["values"], 1);
  const plain = list.map((value, at) => given.plain(value, ["values", at + 1]));
  given.list(plain, ["values"], 1);
  const wanted = given
    .list(shares, ["shares"])
    .map((share, at) => given.plain(share, ["shares", at + 1], { min: 0, max: 1 }));
  given.done();
  const sorted = Float64Array.from(plain).sort();
  return wanted.map((share) => quantileOfSorted(sorted, share));
}

/** For inner loops: the values sorted, no checks. */
export function quantileOfSorted(sorted: Float64Array, share: number): number {
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const low = sorted[below] ?? Number.NaN;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? low;
  return low + (high - low) * (place - below);
}

/** For inner loops: the band of some values, whose order is lost. Only what is asked for is put in its place. */
export function bandOf(values: Float64Array): Band {
  return {
    low: quantileHere(values, 0.1),
    likely: quantileHere(values, 0.5),
    high: quantileHere(values, 0.9),
  };
}

/** The same figure as `quantileOfSorted`, of values in any order. */
function quantileHere(values: Float64Array, share: number): number {
  const place = (values.length - 1) * share;
  const below = Math.floor(place);
  const low = putInPlace(values, below);
  let high = low;
  if (below + 1 < values.length && place > below) {
    high = Number.POSITIVE_INFINITY;
    // All after it are as great or greater: the least of them is the next.
    for (let at = below + 1; at < values.length; at += 1) high = Math.min(high, values[at] ?? high);
  }
  return low + (high - low) * (place - below);
}

/** Hoare's selection: moves values until the one at a place is as if they were sorted. */
function putInPlace(values: Float64Array, place: number): number {
  let [from, to] = [0, values.length - 1];
  while (from < to) {
    const pivot = values[(from + to) >> 1] ?? 0;
    let [i, j] = [from, to];
    while (i <= j) {
      while ((values[i] ?? 0) < pivot) i += 1;
      while ((values[j] ?? 0) > pivot) j -= 1;
      if (i > j) break;
      const held = values[i] ?? 0;
      values[i] = values[j] ?? 0;
      values[j] = held;
      i += 1;
      j -= 1;
    }
    if (place <= j) to = j;
    else if (place >= i) from = i;
    else break;
  }
  return values[place] ?? Number.NaN;
}
