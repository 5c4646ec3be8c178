export {
  type CellPlace,
  type CellReader,
  type Column,
  type Columns,
  optionalColumn,
  type RowOf,
  requiredColumn,
} from "./column.ts";
export { readCsv } from "./read-csv.ts";
export { readRows } from "./read-rows.ts";
export type { TableReading } from "./table-reading.ts";
export type { TableText } from "./table-text.ts";
export { writeCsv } from "./write-csv.ts";
