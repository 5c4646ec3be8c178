/** How a published figure is known: the marks of the tables in `data/`. */
export type LedgerMark = "READ" | "READ-2nd" | "DERIVED" | "common practice" | "from memory";

/** A published example or table about soil, and where it is checked or why it is not. */
export type LedgerRow = {
  /** What is printed, in a few words of our own. */
  readonly what: string;
  /** The publication: an id of `data/sources.json`, or author, title and year where no row or check cites it. */
  readonly source: string;
  readonly mark: LedgerMark;
} & (
  | {
      /** The file below `tests/` and a part of its test's title. */
      readonly checked: { readonly file: string; readonly title: string };
    }
  | { readonly leftOut: string }
);
