import type { EngineProblem } from "./problem.ts";

/** The kinds of entry the page has a field for. */
export type EntryKind =
  | "length"
  | "area"
  | "volume"
  | "mass"
  | "money"
  | "number"
  | "percent"
  | "choice"
  | "yes-no"
  | "date"
  | "text";

/**
 * What a field maker returns and the engine knows: a cell whose value has `entry` is an entry. Its
 * state is the text typed, nothing else; `read` runs where the cells run.
 */
export interface Entry<T = unknown> {
  readonly entry: EntryKind;
  /** The text it has before anybody types: read like any other. */
  readonly initial: string;
  /** A sentence for the reader, as which range is usual. */
  readonly hint?: string;
  /** The unit a bare number takes, as printed beside the field. */
  readonly unit?: string;
  /** What may be chosen, for `choice`: the text that is stored and what the reader sees. */
  readonly options?: readonly { readonly text: string; readonly label: string }[];
  /** The limits in words: "1/16 in to 6 in". */
  readonly limits?: string;
  /** Ends and step of a slide beside the field, which writes numbers into it. */
  readonly slide?: Slide;
  /** Where the default comes from: a source id, `common practice`, `from memory`. */
  readonly sources?: readonly string[];
  readonly read: (text: string) => EntryReading<T>;
}

/** A slide that moves a number from one end to the other. */
export interface Slide {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

export type EntryReading<T> =
  | {
      readonly ok: true;
      readonly value: T;
      /** The text with the unit it took, where a bare number was typed: this is what is kept. */
      readonly complete?: string;
    }
  | { readonly ok: false; readonly problem: EngineProblem };
