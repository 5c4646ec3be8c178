import type * as plot from "@observablehq/plot";
import type * as arquero from "arquero";
import type * as lib from "../../lib/index.ts";
import type * as fields from "../../notebooks/fields/index.ts";

// The types of what cells are handed. Where a name means something else in a cell than in the
// library, it stands in `Changed`.

/** What the session gives a function that takes long, whoever calls it. */
type GivenApart = "solve" | "progress" | "signal" | "remembered" | "pause" | "improved";

/** A function that takes long, as cells call it: its last argument holds no more than choices. */
type Apart<F> = F extends (...given: infer A) => infer R
  ? Required<A> extends readonly [...infer D, infer O]
    ? (...given: [...D, choices?: Omit<O, GivenApart>]) => R
    : never
  : never;

/** The functions that take long, as `build/long-work.ts` lists them. */
type Long = keyof typeof lib &
  (
    | "planBoards"
    | "planBoardsAtYard"
    | "planGarden"
    | "planBuying"
    | "compareBuying"
    | "planGardenBuying"
    | "compareGardenBuying"
  );

type Changed = { readonly [N in Long]: Apart<(typeof lib)[N]> } & {
  readonly Plot: typeof plot;
  readonly aq: typeof arquero;
};

type Handed = typeof lib & typeof fields;

export type CellNames = Omit<Handed, keyof Changed> & Changed;

/** What stands for the operators of a formula. */
export type Operators = Pick<
  typeof lib,
  | "plus"
  | "minus"
  | "times"
  | "over"
  | "remainder"
  | "power"
  | "negative"
  | "less"
  | "atMost"
  | "more"
  | "atLeast"
  | "same"
>;

export interface Given {
  readonly units: "us" | "metric";
  readonly today: lib.CalendarDate;
}

export type TableText = lib.TableText;

/** What a cell's formula gives as other cells see it: what was entered, for an entry. */
export type Value<T> = T extends {
  readonly entry: string;
  readonly read: (text: string) => infer R;
}
  ? R extends { readonly ok: true; readonly value: infer V }
    ? V
    : never
  : T;

/** The values a formula with `yield` gives, one after another. */
export type Yielded<T> = T extends AsyncGenerator<infer V> ? V : T;
