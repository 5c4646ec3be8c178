/** A document read into its blocks. Joining the `text` of all blocks gives the document back, byte for byte. */
export interface Notebook {
  /** Name of the file, relative to the folder of notebooks: `rebuild.md`. */
  readonly file: string;
  /** Text of the first level-1 heading, else the file's name. */
  readonly title: string;
  readonly blocks: readonly Block[];
  readonly problems: readonly DocumentProblem[];
}

export type Block = ProseBlock | CellBlock | TableBlock | UsesBlock;

interface BlockPlace {
  /** The exact text of the block in the document, its fences and line ends included. */
  readonly text: string;
  /** First line of the block in the document, from 1. */
  readonly line: number;
}

/** Anything that is none of ours: headings, paragraphs, lists, other fences. */
export interface ProseBlock extends BlockPlace {
  readonly kind: "prose";
  /** Names put into sentences by code spans that begin with `fig`. */
  readonly figures: readonly { readonly name: string; readonly line: number }[];
}

/** What the words after a cell's or table's name ask of the page. */
export interface Hints {
  /** Belongs to the answers that stay in sight. */
  readonly pinned: boolean;
  /** Not drawn in the reading view: a step between. */
  readonly quiet: boolean;
  /** Drawn folded under its title: long, and seldom read whole. */
  readonly folded: boolean;
  /** What people call it: the text in quotes after the name; else made from the name. */
  readonly title: string;
}

export interface CellBlock extends BlockPlace {
  readonly kind: "cell";
  readonly name: string;
  readonly hints: Hints;
  readonly formula: string;
  /** Line in the document of the first line of the formula. */
  readonly formulaLine: number;
}

export interface TableBlock extends BlockPlace {
  readonly kind: "table";
  readonly name: string;
  readonly hints: Hints;
  readonly csv: string;
  /** Line in the document of the table's heading row. */
  readonly csvLine: number;
}

export interface UsesBlock extends BlockPlace {
  readonly kind: "uses";
  readonly file: string;
  readonly names: readonly { readonly name: string; readonly line: number }[];
}

/** Something wrong with the document or a formula, at a line of the document. */
export interface DocumentProblem {
  readonly code: DocumentProblemCode;
  readonly file: string;
  readonly line: number;
  /** Column from 1, where it is known. */
  readonly column?: number;
  /** The names concerned: of cells, in a cycle in their order. */
  readonly names: readonly string[];
  /** The words: what is wrong and what to do. */
  readonly message: string;
}

export type DocumentProblemCode =
  | "bad-name"
  | "unknown-hint"
  | "unclosed-fence"
  | "defined-twice"
  | "not-defined"
  | "cycle"
  | "file-cycle"
  | "file-missing"
  | "not-shared"
  | "syntax"
  | "assignment"
  /** A block that should carry a used notebook or what was entered, and can't be read. */
  | "not-carried"
  /** Something was entered for a cell that is not there: it is kept. */
  | "entry-without-cell"
  /** A formula names what formulas may not have: a clock, chance, the network. */
  | "not-allowed"
  /** A remark: the cell hides a name of the library. */
  | "name-shadows"
  /** A remark: a cell inside a list or quotation is only shown. */
  | "nested-fence";
