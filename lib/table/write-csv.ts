import { requireTable } from "./require-table.ts";
import { spreadsheetSafe } from "./spreadsheet-safe.ts";
import type { TableText } from "./table-text.ts";

/**
 * Writes a table as comma-separated text, with `;` where its numbers have decimal commas. What was
 * typed stays as it was typed; text that a spreadsheet would run as a formula (beginning with `=`,
 * `+`, `-` or `@`) gets an apostrophe before it, which `readCsv` takes away again, so that reading
 * back gives the same table. Lines end in a line feed.
 *
 * @param table any table of text
 * @rule RFC 4180: a field with a separator, a quote, a line end or outer blanks is quoted
 * @source rfc-4180
 * @example
 * writeCsv(readCsv("bed,length\nA,8 ft 3 1/2 in", "beds")) // => "bed,length\nA,8 ft 3 1/2 in\n"
 */
export function writeCsv(table: TableText): string {
  requireTable(table);
  const separator = table.decimal === "," ? ";" : ",";
  // One column alone would not show which separator it has.
  const tail = table.columns.length === 1 && separator === ";" ? ";" : "";
  const lines = [table.columns, ...table.rows].map((fields) => {
    const line = fields.map(fieldText).join(separator);
    return `${line === "" && fields.length > 0 ? '""' : line}${tail}\n`;
  });
  return table.columns.length === 0 ? "" : lines.join("");
}

function fieldText(text: string): string {
  const safe = spreadsheetSafe(text);
  const needsQuotes = /[",;\t\r\n]|^\s|\s$|^'/.test(safe);
  return needsQuotes ? `"${safe.replaceAll('"', '""')}"` : safe;
}
