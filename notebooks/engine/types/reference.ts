/** One field of a record of options, of a row, or of what comes back. */
export interface ReferenceField {
  readonly name: string;
  readonly type: string;
  /** What it is, with its unit and its default. */
  readonly help?: string;
  readonly optional?: true;
}

/** What a function is handed at one place. */
export interface ReferenceParameter extends ReferenceField {
  /** The fields of the record handed in. */
  readonly fields?: readonly ReferenceField[];
}

/** One statement of an example. */
export interface ExampleStep {
  readonly code: string;
  /** What it says it gives: a quantity as printed, anything else as JSON. */
  readonly says?: string;
}

/** An example: statements one after another, at least one of which says what it gives. */
export type ReferenceExample = readonly ExampleStep[];

/** One name that cells may use, as its doc comment tells it. */
export interface ReferenceName {
  readonly name: string;
  readonly what: "function" | "constant" | "type" | "entry" | "table" | "package";
  /** The trade it belongs to: `lumber`, `soil`, `entries`, `published`. */
  readonly group: string;
  readonly signature: string;
  readonly summary: string;
  /** The formula in words. */
  readonly rule?: string;
  /** Ids of sources, or `common practice`, or `from memory`. */
  readonly sources: readonly string[];
  readonly throws: readonly string[];
  readonly examples: readonly ReferenceExample[];
  readonly parameters: readonly ReferenceParameter[];
  readonly returns?: {
    readonly type: string;
    readonly help?: string;
    readonly fields?: readonly ReferenceField[];
  };
  /** The fields of a record, the columns of a table. */
  readonly fields?: readonly ReferenceField[];
  /** True of a function whose example takes seconds, and is run when asked. */
  readonly long?: true;
}

/** What `reference.json` beside the page holds. */
export interface Reference {
  /** The groups in the order of the job, with their headings. */
  readonly groups: readonly { readonly name: string; readonly title: string }[];
  readonly names: readonly ReferenceName[];
}
