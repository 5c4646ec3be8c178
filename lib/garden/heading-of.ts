import type { TableText } from "../table/index.ts";

/** The heading of a known column as it is written in the table, for the path of a problem. */
export function headingOf(table: TableText, column: string): string {
  const plain = (heading: string) =>
    heading
      .replace(/\s*\([^()]*\)\s*$/, "")
      .trim()
      .toLowerCase()
      .replace(/[\s-]+/g, "_");
  return table.columns.find((heading) => plain(heading) === column) ?? column;
}
