import { type Problem, ProblemError } from "../check/index.ts";
import { type Field, nextField, splitRecords } from "./records.ts";
import { fromSpreadsheetSafe } from "./spreadsheet-safe.ts";
import type { TableText } from "./table-text.ts";

/**
 * Reads comma-separated text as people really have it into a table of text. Fields are separated
 * by commas, tabs or `;`, whichever the heading has most of; a byte-order mark and any line ends
 * are taken. A field is quoted only if it begins with a quote; other quotes are inches. Rows that
 * are too short are filled up with empty fields. Where a row is too long, columns without a heading
 * are added, so that nothing typed is lost; reading the rows then reports it. Wholly blank lines
 * are left out. Decimals have a comma where fields are separated by `;`.
 *
 * @param text the text of a file or of a clipboard; empty text gives a table without columns
 * @param name the table's name, as it stands in the path of problems
 * @throws ProblemError where what is given is no text (`missing` for nothing, else `unreadable`)
 * @rule RFC 4180, with the separator found from the heading
 * @source rfc-4180
 * @example
 * readCsv('bed;length\nA;2,4 m', "beds").rows // => [["A","2,4 m"]]
 * readCsv('bed,length\nA,8\' 3 1/2"', "beds").rows // => [["A","8' 3 1/2\""]]
 */
export function readCsv(text: string, name: string): TableText {
  if (typeof text !== "string") throw notText(text, "text");
  if (typeof name !== "string") throw notText(name, "name");
  const plain = text.replace(/^\uFEFF/, "");
  const separator = separatorOf(plain);
  const records = splitRecords(plain, separator).filter((record) => !isBlankLine(record));
  const texts = records.map((record) => record.map((field) => fromSpreadsheetSafe(field.text)));
  const [heading = [], ...rows] = texts;
  const width = Math.max(0, filledWidth(heading), ...widths(rows));
  return {
    kind: "table",
    name,
    columns: toWidth(heading, width),
    rows: rows.map((row) => toWidth(row, width)),
    decimal: separator === ";" ? "," : ".",
  };
}

function notText(value: unknown, argument: string): ProblemError {
  const problem: Problem = {
    code: value === undefined || value === null ? "missing" : "unreadable",
    path: [argument],
    allowed: argument === "text" ? "the text of a table" : "a text",
    received:
      value === undefined || value === null
        ? ""
        : typeof value === "object"
          ? "a record"
          : String(value),
    remedy: argument === "text" ? "Give the text of the file as it is." : "Give the table's name.",
  };
  return new ProblemError([problem]);
}

// In one pass and without spreading: a table may have more rows than a call takes arguments.
function widths(rows: readonly (readonly string[])[]): readonly [number] {
  let widest = 0;
  for (const row of rows) widest = Math.max(widest, filledWidth(row));
  return [widest];
}

function filledWidth(fields: readonly string[]): number {
  return fields.findLastIndex((field) => field !== "") + 1;
}

function toWidth(fields: readonly string[], width: number): string[] {
  return Array.from({ length: width }, (_, index) => fields[index] ?? "");
}

function isBlankLine(record: readonly Field[]): boolean {
  const [only] = record;
  return record.length === 1 && only !== undefined && only.text === "" && !only.quoted;
}

const separators = "\t;,";

/** The separator the heading has most of, quoted fields apart. */
function separatorOf(text: string): string {
  const counts = new Map<string, number>();
  let at = /^[\r\n]*/.exec(text)?.[0].length ?? 0;
  for (;;) {
    at = nextField(text, at, separators).end;
    const separator = text[at];
    if (separator === undefined || !separators.includes(separator)) break;
    counts.set(separator, (counts.get(separator) ?? 0) + 1);
    at += 1;
  }
  const most = Math.max(0, ...counts.values());
  return [...separators].find((separator) => counts.get(separator) === most) ?? ",";
}
