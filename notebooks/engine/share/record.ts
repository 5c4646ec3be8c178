/** What a link holds, once it is known to be whole. Its texts are believed no more than a stranger’s typing. */
export interface LinkRecord {
  /** The notebook's file name. */
  readonly file: string;
  /** The version of its text, as `versionOf` gives it. */
  readonly version: string;
  readonly entries: readonly LinkEntry[];
  readonly tables: readonly LinkTable[];
  /** Texts of documents that are the sender's own, the notebook itself first. */
  readonly own: readonly LinkDocument[];
}

export interface LinkEntry {
  readonly file: string;
  readonly name: string;
  readonly text: string;
}

export interface LinkTable {
  readonly file: string;
  readonly name: string;
  /** The version of the rows in the document that the steps begin from. */
  readonly from: string;
  readonly steps: RowSteps;
}

export interface LinkDocument {
  readonly file: string;
  readonly text: string;
}

/** How a table comes from the one in its document. */
export interface RowSteps {
  /** Each column: the number of the one it was, or the name of a new one. Absent: as they were. */
  readonly columns?: readonly (number | string)[];
  readonly rows: readonly RowStep[];
  readonly decimal: "." | ",";
}

/** Rows as they stand in the document (with the columns above), one after the other. */
export type RowStep =
  | { readonly step: "keep"; readonly count: number }
  | { readonly step: "leave"; readonly count: number }
  | { readonly step: "add"; readonly row: readonly string[] }
  /** The next row with other texts in some columns. */
  | {
      readonly step: "change";
      readonly fields: readonly { readonly column: number; readonly text: string }[];
    };
