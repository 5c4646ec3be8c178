export { readCsv } from "./read-csv.ts";
export type { TableText } from "./table-text.ts";
export { writeCsv } from "./write-csv.ts";
