import { type Problem, ProblemError, type Reading, requireRecord } from "../check/index.ts";
import type { CellPlace, Column, Columns, RowOf } from "./column.ts";
import { type Headings, type Place, readHeadings } from "./heading.ts";
import { requireTable } from "./require-table.ts";
import type { TableReading } from "./table-reading.ts";
import type { TableText } from "./table-text.ts";

/**
 * Reads a table's rows by its columns. All problems are collected, each with the path table, row,
 * heading; a row with a problem is left out. Blank rows are passed over. Columns may stand in any
 * order; unknown ones give a remark. Where a column that must be there is missing or written twice,
 * no row can be trusted and none is given.
 *
 * @param table as `readCsv` gives it
 * @param columns by name, each made by `requiredColumn` or `optionalColumn`
 * @rule one record a row, of the columns that are known
 * @source common practice
 * @example
 * const columns = { bed: requiredColumn(readLength), note: optionalColumn(readLength) };
 * readRows(readCsv("bed\n8 ft\n8", "list"), columns).problems[0].path // => ["list",2,"bed"]
 */
export function readRows<C extends Columns>(table: TableText, columns: C): TableReading<RowOf<C>> {
  requireTable(table);
  requireRecord(columns, ["columns"]);
  const written = table.rows
    .map((fields, index) => ({ fields, row: index + 1 }))
    .filter(({ fields }) => fields.some((field) => field.trim() !== ""));
  const headings: Headings =
    table.columns.length === 0 && written.length === 0
      ? { places: new Map(), nameless: [], problems: [], remarks: [] }
      : readHeadings(table, columns);
  const problems: Problem[] = [...headings.problems];
  const rows: (RowOf<C> & { readonly row: number })[] = [];
  if (problems.length === 0) {
    for (const { fields, row } of written) {
      const before: number = problems.length;
      const values = readFields(table, columns, { headings, fields, row, problems });
      if (problems.length === before) rows.push({ ...values, row });
    }
  }
  const { remarks } = headings;
  return { kind: "reading", table: table.name, rows, given: written.length, problems, remarks };
}

interface OneRow {
  readonly headings: Headings;
  readonly fields: readonly string[];
  readonly row: number;
  readonly problems: Problem[];
}

function readFields<C extends Columns>(table: TableText, columns: C, one: OneRow): RowOf<C> {
  const { headings, fields, row, problems } = one;
  const values: Record<string, unknown> = {};
  for (const [name, column] of Object.entries(columns)) {
    values[name] = undefined;
    const place = headings.places.get(name);
    if (place === undefined) continue;
    const text = fields[place.index]?.trim() ?? "";
    if (text === "" && !column.must) continue;
    const reading = readCell(column, text, cellPlace(table, row, place));
    if (reading.ok) values[name] = reading.value;
    else problems.push(reading.problem);
  }
  for (const index of headings.nameless) {
    const text = fields[index]?.trim() ?? "";
    if (text !== "") problems.push(tooManyFields(table, { row, index, text }));
  }
  return values as RowOf<C>;
}

/** A reader throws where the heading's unit is none of its kind; that too is a problem of the field. */
function readCell(column: Column<unknown>, text: string, place: CellPlace): Reading<unknown> {
  try {
    return column.read(text, place);
  } catch (error) {
    const [problem] = error instanceof ProblemError ? error.problems : [];
    if (problem === undefined) throw error;
    const remedy = "Put a unit that suits the column into its heading, or one behind each number.";
    return { ok: false, problem: { ...problem, path: place.path, remedy } };
  }
}

function cellPlace(table: TableText, row: number, place: Place): CellPlace {
  const path = [table.name, row, place.heading];
  const { unit } = place;
  return { path, decimal: table.decimal, ...(unit === undefined ? {} : { unit }) };
}

function tooManyFields(
  table: TableText,
  found: { readonly row: number; readonly index: number; readonly text: string },
): Problem {
  const headed = table.columns.filter((heading) => heading.trim() !== "").length;
  return {
    code: "contradiction",
    path: [table.name, found.row, `column ${found.index + 1}`],
    allowed: `no more than ${headed} fields, as many as there are headings`,
    received: found.text,
    remedy:
      "Look for a comma inside a field (put the field in quotes), or give the column a heading.",
  };
}
