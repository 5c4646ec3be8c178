import type { EntryKind, Slide } from "./entry.ts";
import type { EngineProblem } from "./problem.ts";

/**
 * A drawing as plain data: text, or an element with its name space (1 is SVG, 0 is HTML), name,
 * attributes and children. The page builds nodes from it through an allow-list.
 */
export type Tree =
  | string
  | readonly [
      space: 0 | 1,
      name: string,
      attributes: Readonly<Record<string, string>>,
      children: readonly Tree[],
    ];

/** A printed value: the figure, its unit, and the same in the other system where there is one. */
export interface Figure {
  /** The whole, as in a sentence: "4.2 cu yd". */
  readonly text: string;
  /** The digits alone, for the figures' column; equal to `text` where there is no unit. */
  readonly number: string;
  readonly unit: string;
  /** "3.2 m³", or absent. */
  readonly second?: string;
}

/**
 * How large a printed value is, so that values can be compared and drawn: in coherent SI, money in
 * its currency. The three are alike but for a range.
 */
export interface Measure {
  /** What is measured: "length", "money", "number"; values of one kind only can be compared. */
  readonly of: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A caution as shown: sentences, not records. */
export interface ShownCaution {
  readonly id: string;
  readonly fact: string;
  readonly advice: string;
  readonly defersTo: string;
  readonly sources: readonly string[];
  readonly because?: string;
}

/** What the page draws for a value. Plain data only: it crosses from the closed room. */
export type Shown =
  | { readonly kind: "nothing" }
  | { readonly kind: "figure"; readonly figure: Figure; readonly measure?: Measure }
  | { readonly kind: "text"; readonly text: string }
  | {
      readonly kind: "table";
      readonly columns: readonly ShownColumn[];
      readonly rows: readonly (readonly Figure[])[];
      /** How many more rows there are than are sent. */
      readonly more: number;
    }
  | {
      readonly kind: "record";
      readonly fields: readonly { readonly title: string; readonly shown: Shown }[];
    }
  | { readonly kind: "list"; readonly items: readonly Shown[]; readonly more: number }
  | { readonly kind: "drawing"; readonly drawing: ShownDrawing }
  | { readonly kind: "cautions"; readonly cautions: readonly ShownCaution[] }
  | {
      /** Rows that the reader may add to a table of theirs, by a button of the page. */
      readonly kind: "rows-for";
      /** The table's name, as formulas of the cell's document have it. */
      readonly table: string;
      readonly columns: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  | {
      readonly kind: "table-text";
      readonly columns: readonly string[];
      readonly rows: readonly (readonly string[])[];
      readonly decimal: "." | ",";
    };

export interface ShownColumn {
  readonly key: string;
  readonly title: string;
  /** The unit in the head, when the whole column shares it. */
  readonly unit: string;
  readonly align: "left" | "right";
}

/**
 * A drawing in the forms it was made in: `from` is the least width in CSS pixels at which a form
 * is used, the narrowest form has 0.
 */
export interface ShownDrawing {
  readonly title: string;
  /** What a person who cannot see it needs to know. */
  readonly alternative: string;
  readonly caption?: string;
  readonly forms: readonly { readonly from: number; readonly tree: Tree }[];
}

/** An entry as shown: everything of `Entry` but the reader, and how its present text reads. */
export interface ShownEntry {
  readonly entry: EntryKind;
  readonly initial: string;
  readonly text: string;
  /** What to keep instead of the text: a bare number with the unit it took. */
  readonly complete?: string;
  readonly hint?: string;
  readonly unit?: string;
  readonly options?: readonly { readonly text: string; readonly label: string }[];
  readonly limits?: string;
  /** The slide beside the field, and where it stands; its place is not known of a text that is refused. */
  readonly slide?: Slide & { readonly at?: number };
  readonly sources?: readonly string[];
  /** The value as printed, to stand under the field where it says more than the text. */
  readonly printed?: Figure;
  readonly problem?: ShownProblem;
}

/** A problem with its sentence. */
export interface ShownProblem extends EngineProblem {
  readonly sentence: string;
}

/** Something that was understood, but is worth knowing: a column that is not used. */
export interface ShownRemark {
  readonly path: EngineProblem["path"];
  readonly text: string;
}

/** Why a cell has no value. */
export interface CellError {
  /** `waits` for a cell that names another that has an error. */
  readonly kind: "document" | "formula" | "problems" | "waits" | "stopped";
  readonly message: string;
  readonly file: string;
  readonly line: number;
  readonly column?: number;
  readonly names: readonly string[];
  readonly problems: readonly ShownProblem[];
}
