import type { CellId, TableText, Units } from "../types/index.ts";

/** What an entry or a table holds. */
export type EnteredValue = string | TableText;

/** What was typed into one notebook's entries and tables, by the cell's name. */
export interface EnteredRecord {
  readonly kind: "entered";
  readonly version: 1;
  /** The place: `garden.md`, or `plot.md>garden.md` where a notebook keeps it apart. */
  readonly file: string;
  readonly cells: Readonly<Record<string, EnteredValue>>;
}

export interface SettingsRecord {
  readonly kind: "settings";
  readonly version: 1;
  readonly units: Units;
}

/** Where one of the reader's own documents came from. */
export type Origin =
  | { readonly from: "shipped"; readonly file: string; readonly shippedVersion?: string }
  | { readonly from: "new" }
  | { readonly from: "file"; readonly name: string }
  | { readonly from: "link"; readonly key: string };

/** A document of the reader's own, or one that such a notebook carries. */
export interface DocumentRecord {
  readonly kind: "document";
  readonly version: 1;
  readonly place: string;
  readonly text: string;
  readonly title: string;
  /** Counts the times it was written; what was written over an older one than is there is not. */
  readonly revision: number;
  /** ISO instant of the last change. */
  readonly changed: string;
  readonly origin: Origin;
  /** The reader's own garden is used instead of the documents it carries. */
  readonly ownGarden: boolean;
  /** The open page that wrote it last. */
  readonly writer?: string;
}

/** Everything entered in an open notebook, under a name. */
export interface Plan {
  readonly name: string;
  readonly entered: Readonly<Record<CellId, EnteredValue>>;
  /** ISO instant at which it was kept. */
  readonly made: string;
}

export interface PlansRecord {
  readonly kind: "plans";
  readonly version: 1;
  readonly main: string;
  readonly plans: readonly Plan[];
}

/** Why a state was taken: before what. */
export type StateReason =
  | "typing"
  | "editing"
  | "bringing back"
  | "taking in"
  | "putting back"
  | "removing"
  /** Written here while another tab wrote the same. */
  | "two tabs"
  /** Came with a file of everything, and differed from what is here. */
  | "from a file"
  /** Had not been written when its page ended. */
  | "left behind";

/** What a notebook was at one time. */
export interface StateContent {
  /** The files of the open documents: entries of others are none of its business. */
  readonly files: readonly string[];
  /** Texts of the reader's own documents among the open ones, by file. */
  readonly texts: Readonly<Record<string, string>>;
  readonly entered: Readonly<Record<CellId, EnteredValue>>;
}

export interface StateRecord extends StateContent {
  readonly kind: "state";
  readonly version: 1;
  readonly main: string;
  readonly number: number;
  /** ISO instant at which it was taken. */
  readonly at: string;
  readonly why: StateReason;
  /** Whether the entries of the documents it uses are those it keeps apart. */
  readonly apart: boolean;
  /** The name of the plan it was, where it was one. */
  readonly plan?: string;
  /** All records of the notebook, where it was removed. */
  readonly whole?: Readonly<Record<string, unknown>>;
}

/** A state as the index lists it. */
export interface ListedState {
  readonly number: number;
  readonly at: string;
  readonly why: StateReason;
}

export interface StatesRecord {
  readonly kind: "states";
  readonly version: 1;
  readonly main: string;
  /** The number the next state gets. */
  readonly next: number;
  /** The oldest first. */
  readonly states: readonly ListedState[];
  /** Where the notebook was removed. */
  readonly removed?: { readonly title: string; readonly at: string };
}

export type KeptRecord =
  | EnteredRecord
  | SettingsRecord
  | DocumentRecord
  | PlansRecord
  | StateRecord
  | StatesRecord;

export type KindOfRecord = KeptRecord["kind"];
export type RecordOf<K extends KindOfRecord> = Extract<KeptRecord, { readonly kind: K }>;
