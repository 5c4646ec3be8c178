/**
 * What kind of thing is wrong. The kinds are few, so that whoever shows problems can treat each.
 *
 * - `missing`: nothing was given where something is needed
 * - `unreadable`: the text or value is not of the kind asked for ("6 fot" for a length)
 * - `wrong-unit`: a quantity of another dimension, or a bare number where a unit is needed
 * - `too-small`, `too-large`: outside the allowed range, zero and negative values included
 * - `unknown`: a name, key or choice that is not known here
 * - `duplicate`: given twice where it must be unique
 * - `mixed-currency`: two currencies in one garden
 * - `contradiction`: each value is fine alone, together they are not
 * - `unpriced`: something must be bought and no yard has a price for it
 * - `no-fit`: a piece is longer than every board
 */
export type ProblemCode =
  | "missing"
  | "unreadable"
  | "wrong-unit"
  | "too-small"
  | "too-large"
  | "unknown"
  | "duplicate"
  | "mixed-currency"
  | "contradiction"
  | "unpriced"
  | "no-fit";

/**
 * Where the problem is: for a table `[table, row, column]` with rows counted from 1 and the heading
 * not counted; for an option or argument its name, as `["kerf"]` or `["bed", "length"]`.
 */
export type Path = readonly (string | number)[];

/** One thing wrong with what was given, as a record; `sentence` makes words of it. */
export interface Problem {
  readonly code: ProblemCode;
  readonly path: Path;
  /** What is allowed there, in words with units: "a length from 1 in to 100 ft". */
  readonly allowed: string;
  /** What was received, exactly as it was given; empty when nothing was. */
  readonly received: string;
  /** What to do: "Write 6 ft, 72 in or 183 cm." */
  readonly remedy: string;
  /** Other places the problem concerns, as both tables of a mixed currency. */
  readonly also?: readonly Path[];
}

/** What reading something gives: the value, or why there is none. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

/**
 * A remark says that something was understood but is worth knowing: an unknown column that was
 * ignored, a bed without a place.
 */
export interface Remark {
  readonly path: Path;
  readonly text: string;
}
