import type { TableText } from "../types/index.ts";

/**
 * The cells of a spreadsheet's clipboard: lines of fields between tabs. A field in double quotes
 * may hold tabs, line ends and doubled quotes; any other quote is an inch.
 */
export function readClipboard(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  const body = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  while (at < body.length) {
    const quoted = /"(?:[^"]|"")*"(?=[\t\n]|$)/y;
    quoted.lastIndex = at;
    const found = quoted.exec(body)?.[0];
    const plain = /[^\t\n]*/y;
    plain.lastIndex = at;
    const field = found ?? plain.exec(body)?.[0] ?? "";
    row.push((found ? field.slice(1, -1).replaceAll('""', '"') : field).trim());
    at += field.length;
    const end = body[at];
    at += 1;
    if (end === "\t" && at < body.length) continue;
    if (end === "\t") row.push("");
    rows.push(row);
    row = [];
  }
  while (rows.length > 0 && rows.at(-1)?.every((field) => field === "")) rows.pop();
  return rows;
}

/** Whether a pasted text is rows and columns rather than something for one field. */
export function isRange(text: string): boolean {
  return /[\t\n\r]/.test(text.trimEnd());
}

export interface Pasted {
  readonly table: TableText;
  /** How many rows were filled. */
  readonly rows: number;
  /** The headings, where the first line held them. */
  readonly headings: boolean;
  /** Fields that stood beyond the last column and have no place. */
  readonly beyond: number;
}

/**
 * Puts a range into a table, from a row and a column on; rows are made as needed. Where the first
 * line holds the table's headings, fields go under their own headings from the first column on, and
 * headings the table lacks become new columns; such rows take the place of those that were there.
 */
export function pasteInto(
  table: TableText,
  range: readonly (readonly string[])[],
  { row, column }: { readonly row: number; readonly column: number },
): Pasted {
  const headings = headingsOf(table, range[0] ?? []);
  const body = headings ? range.slice(1) : range;
  const columns = headings ? withNew(table.columns, headings) : [...table.columns];
  const places = headings
    ? headings.map(({ name }) => columns.findIndex((one) => sameName(one, name)))
    : (range[0] ?? []).map((_, index) => column + index);
  const rows = table.rows.map((one) => columns.map((_, index) => one[index] ?? ""));
  // Rows as needed; a paste below the last row leaves no hole.
  while (rows.length < row + body.length) rows.push(columns.map(() => ""));
  let beyond = 0;
  body.forEach((fields, offset) => {
    // Whole rows with their headings are other rows: nothing of those they replace stays in them.
    if (headings) rows[row + offset] = columns.map(() => "");
    const target = rows[row + offset] ?? [];
    fields.forEach((field, index) => {
      const place = places[index] ?? column + index;
      if (place < 0 || place >= columns.length) {
        if (field !== "") beyond += 1;
      } else target[place] = withUnit(field, headings?.[index]?.unit);
    });
  });
  return {
    table: { ...table, columns, rows },
    rows: body.length,
    headings: headings !== undefined,
    beyond,
  };
}

interface Heading {
  readonly name: string;
  /** The unit in brackets, that bare numbers below take. */
  readonly unit: string | undefined;
}

/** The first line as headings, where it names more of the table's columns than not. */
function headingsOf(table: TableText, line: readonly string[]): readonly Heading[] | undefined {
  const headings = line.map((text) => {
    const found = /^(.*?)\s*\(([^)]+)\)\s*$/.exec(text);
    return { name: (found?.[1] ?? text).trim(), unit: found?.[2]?.trim() };
  });
  const given = headings.filter(({ name }) => name !== "");
  const known = given.filter(({ name }) => table.columns.some((one) => sameName(one, name)));
  return known.length > 0 && known.length * 2 > given.length ? headings : undefined;
}

function withNew(columns: readonly string[], headings: readonly Heading[]): string[] {
  const all = [...columns];
  for (const { name } of headings)
    if (name !== "" && !all.some((one) => sameName(one, name))) all.push(name);
  return all;
}

/** `Soil depth`, `soil_depth` and `soil_depth (in)` are one name. */
export function sameName(a: string, b: string): boolean {
  const bare = (name: string) =>
    name
      .replace(/\s*\([^)]*\)\s*$/, "")
      .toLowerCase()
      .replace(/[\s_-]+/g, "");
  return bare(a) === bare(b);
}

/** A bare number under a heading with a unit takes it; anything else says its own. */
function withUnit(field: string, unit: string | undefined): string {
  return unit !== undefined && /^[\d.,\s/]+$/.test(field) && field !== ""
    ? `${field} ${unit}`
    : field;
}
