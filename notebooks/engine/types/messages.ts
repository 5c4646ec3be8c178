import type { Surroundings, Units } from "./host.ts";
import type { DocumentProblem, Hints, Notebook } from "./notebook.ts";
import type {
  CellError,
  Shown,
  ShownCaution,
  ShownEntry,
  ShownProblem,
  ShownRemark,
} from "./shown.ts";
import type { TableText } from "./table-text.ts";

/** A cell of any of the open documents: `rebuild.md#total`. */
export type CellId = `${string}#${string}`;

/** What has been entered: the text of an entry, or a table's rows. What is absent has its default. */
export type Entered = Readonly<Record<CellId, string | TableText>>;

/** From the page to the closed room. */
export type ToRoom =
  | {
      readonly kind: "open";
      readonly session: number;
      /** The file shown; it and every file it uses, read into blocks, by name. */
      readonly main: string;
      readonly documents: Readonly<Record<string, Notebook>>;
      readonly entered: Entered;
      readonly surroundings: Surroundings;
      /** Cells that ran without an end and were stopped: not started until they are tried again. */
      readonly stopped?: readonly CellId[];
    }
  | {
      readonly kind: "enter";
      readonly session: number;
      readonly turn: number;
      readonly changes: Entered;
    }
  /** Back to the default of each. */
  | {
      readonly kind: "reset";
      readonly session: number;
      readonly turn: number;
      readonly cells: readonly CellId[];
    }
  | {
      readonly kind: "units";
      readonly session: number;
      readonly turn: number;
      readonly units: Units;
    }
  /** Documents were edited: all of them as they are now, and all that is entered. */
  | {
      readonly kind: "edit";
      readonly session: number;
      readonly turn: number;
      readonly documents: Readonly<Record<string, Notebook>>;
      readonly entered: Entered;
    }
  /** Runs the formula of a cell once more, as after its long work was stopped. */
  | {
      readonly kind: "again";
      readonly session: number;
      readonly turn: number;
      readonly cell: CellId;
    }
  /** Are you there? Answered with `alive` by the room itself; a session never sees it. */
  | { readonly kind: "ping" }
  /** An answer of the long-work worker, passed on by the frame. */
  | { readonly kind: "work"; readonly session: number; readonly work: WorkMessage };

/** From the closed room to the page. Every one is treated as hostile there. */
export type FromRoom =
  | { readonly kind: "ready" }
  | { readonly kind: "alive" }
  | {
      readonly kind: "outline";
      readonly session: number;
      readonly cells: readonly OutlineCell[];
      /** What is wrong with the documents and belongs to no cell. */
      readonly problems?: readonly DocumentProblem[];
    }
  /** Sent before a cell starts, so that one that never ends can be named. */
  | { readonly kind: "starting"; readonly session: number; readonly cell: CellId }
  | {
      readonly kind: "values";
      readonly session: number;
      readonly turn: number;
      readonly cells: readonly CellState[];
    }
  | {
      readonly kind: "progress";
      readonly session: number;
      readonly cell: CellId;
      readonly words: string;
      readonly fraction?: number;
    }
  /** Nothing is being worked out any more, long work apart: `working` names the cells that still wait for it. */
  | {
      readonly kind: "settled";
      readonly session: number;
      readonly turn: number;
      readonly working: readonly CellId[];
    }
  /** Asks the frame to have a listed function worked out apart. */
  | { readonly kind: "work"; readonly session: number; readonly work: WorkMessage };

/**
 * Long work: a listed function's name with plain data, its progress, each better result so far, its
 * end. `stopped` is the end the reader made: the best result so far stands.
 */
export type WorkMessage =
  | {
      readonly step: "ask";
      readonly id: number;
      readonly name: string;
      readonly data: unknown;
      /** The lower is worked out before the higher. */
      readonly order: number;
    }
  | { readonly step: "cancel"; readonly id: number }
  | {
      readonly step: "progress";
      readonly id: number;
      readonly words: string;
      readonly fraction?: number;
    }
  | { readonly step: "improved"; readonly id: number; readonly value: unknown }
  | { readonly step: "done"; readonly id: number; readonly value: unknown }
  | { readonly step: "stopped"; readonly id: number; readonly message: string }
  | {
      readonly step: "failed";
      readonly id: number;
      readonly message: string;
      readonly problems?: unknown;
    };

/** What is known of a cell before anything runs. */
export interface OutlineCell {
  readonly id: CellId;
  readonly name: string;
  readonly file: string;
  readonly line: number;
  readonly what: "cell" | "table";
  readonly hints: Hints;
  readonly formula: string;
  /** Cells it names and cells that name it. */
  readonly takes: readonly CellId[];
  readonly gives: readonly CellId[];
  /** Its formula names a function that takes long. */
  readonly longWork?: boolean;
  /** Library functions it names, with what their doc comments say. */
  readonly functions: readonly {
    readonly name: string;
    readonly rule?: string;
    readonly sources: readonly string[];
  }[];
}

/** What the page is told of a cell after a turn; only cells that changed are sent. */
export interface CellState {
  readonly id: CellId;
  readonly shown?: Shown;
  readonly entry?: ShownEntry;
  readonly error?: CellError;
  /** The formula with its names replaced by their printed values, where that can be read. */
  readonly sum?: string;
  readonly cautions: readonly ShownCaution[];
  /** Problems this cell reports about fields of tables or entries, its own or others'. */
  readonly problems: readonly ShownProblem[];
  /** What this cell found worth knowing about tables, as a column that is not used. */
  readonly remarks?: readonly ShownRemark[];
  /** "13 of 14 beds", where rows of a table it rests on were left out. */
  readonly leftOut?: string;
  /** Its long work was stopped before its end: the value is the best that had been found. */
  readonly cutShort?: boolean;
}
