import type { CellId, DocumentProblem, Hints, Operators } from "../types/index.ts";

/** A notebook made ready to run: its own cells and all cells of used notebooks that it needs. */
export interface Program {
  readonly main: string;
  /** Each cell stands after all it takes; cells in a cycle stand last. */
  readonly cells: readonly CompiledCell[];
  /** Problems and remarks that belong to no cell: of fences, `uses` blocks, figures in prose. */
  readonly problems: readonly DocumentProblem[];
  /** Remarks: nothing is wrong, but the reader may want to know. */
  readonly remarks: readonly DocumentProblem[];
  /** What a name means in a document: for figures in prose, `--cell`, `--set` and `--table`. */
  readonly scopes: ReadonlyMap<string, ReadonlyMap<string, CellId>>;
}

export interface CompiledCell {
  /** `file#name`; the second of two cells with one name is `file#name/2`. */
  readonly id: CellId;
  readonly name: string;
  readonly file: string;
  /** Line of the opening fence in the document, from 1. */
  readonly line: number;
  readonly what: "cell" | "table";
  readonly hints: Hints;
  /** Empty for a table. */
  readonly formula: string;
  /** Line of the formula's (or the table's) first line in the document. */
  readonly formulaLine: number;
  /** A table's text; empty for a cell. */
  readonly csv: string;
  /** Cells it names, each once, in the order first named. */
  readonly takes: readonly CellId[];
  /** Parameters of the compiled function, in order. */
  readonly inputs: readonly Input[];
  /**
   * What `new Function(...inputs' names, body)` takes, or the constructor of async or generator
   * functions. Every statement is on its own line of the formula; the first line has a prefix.
   */
  readonly body: string;
  readonly expression: boolean;
  readonly async: boolean;
  readonly generator: boolean;
  /** All free names with their places, for the working and for renaming. */
  readonly namesUsed: readonly NameUsed[];
  /** Why it can't run, at its place in the document. */
  readonly problem?: DocumentProblem;
}

export interface Input {
  /** As the formula, or its rewritten text, names it. */
  readonly name: string;
  readonly from: InputSource;
}

export type InputSource =
  | { readonly cell: CellId }
  | { readonly library: string }
  | { readonly operator: keyof Operators }
  | { readonly given: "units" | "today" };

export interface NameUsed {
  readonly name: string;
  readonly kind: "cell" | "library" | "given" | "language";
  readonly cell?: CellId;
  readonly places: readonly NamePlace[];
}

export interface NamePlace {
  /** Offset in the formula's text. */
  readonly start: number;
  /** Line and column in the document, from 1. */
  readonly line: number;
  readonly column: number;
  /** `{beds}` stands for `{beds: beds}`: renaming has to write it out. */
  readonly shorthand: boolean;
}
