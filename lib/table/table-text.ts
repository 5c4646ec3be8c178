/**
 * A table as text: what somebody typed, pasted or opened. Every row has as many fields as there
 * are columns; a column without a heading has the name "".
 */
export interface TableText {
  readonly kind: "table";
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** The mark before decimals in its numbers: a comma where fields are separated by `;`. */
  readonly decimal: "." | ",";
}
