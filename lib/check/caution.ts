/**
 * A caution that belongs to a result: what is so, what to do about it, and whose word goes above
 * ours. Cautions are made in `safety` and carried by the results that call for them.
 */
export interface Caution {
  /** Stable name, as `old-treated-wood`; equal names are shown once. */
  readonly id: string;
  /** The fact, one sentence. */
  readonly fact: string;
  /** What to do next, one or two sentences. */
  readonly advice: string;
  /** What this defers to: local rules, a licensed professional, a maker's label. */
  readonly defersTo: string;
  /** Ids of `data/sources.json`, or `common practice`. */
  readonly sources: readonly string[];
  /** What called for it: beds, boards, table rows, in words. */
  readonly because?: string;
}
