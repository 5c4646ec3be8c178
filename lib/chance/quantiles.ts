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

/** For inner loops: sorts the values where they stand, and gives their band. */
export function bandOf(values: Float64Array): Band {
  values.sort();
  return {
    low: quantileOfSorted(values, 0.1),
    likely: quantileOfSorted(values, 0.5),
    high: quantileOfSorted(values, 0.9),
  };
}
