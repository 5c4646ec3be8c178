/**
 * A table as text: what a `csv table` block, a pasted range or a CSV file holds. Every row has as
 * many fields as there are columns.
 */
export interface TableText {
  readonly kind: "table";
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** The mark before decimals in its numbers: a comma where fields are separated by `;`. */
  readonly decimal: "." | ",";
}
