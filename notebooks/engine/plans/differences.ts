import type { CellId, Entered, TableText } from "../types/index.ts";

/** The texts of an entry that is not the same in every column. */
export interface EntryDifference {
  readonly id: CellId;
  readonly texts: readonly string[];
}

/** How the tables of the columns differ from that of the first one. */
export interface TableDifference {
  readonly id: CellId;
  readonly rows: readonly RowDifferences[];
}

/** Rows by what they are called. */
export interface RowDifferences {
  readonly changed: readonly string[];
  readonly added: readonly string[];
  readonly gone: readonly string[];
  /** The tables have other columns. */
  readonly columns: boolean;
}

/** The entries whose texts differ between the columns; `initial` is the default of one. */
export function entryDifferences(
  columns: readonly Entered[],
  initial: (id: CellId) => string,
): readonly EntryDifference[] {
  return idsOf(columns, "text").flatMap((id) => {
    const texts = columns.map((entered) => {
      const value = entered[id];
      return typeof value === "string" ? value : initial(id);
    });
    return new Set(texts.map((text) => text.trim())).size > 1 ? [{ id, texts }] : [];
  });
}

/** The tables that differ between the columns; `initial` is the default of one. */
export function tableDifferences(
  columns: readonly Entered[],
  initial: (id: CellId) => TableText,
): readonly TableDifference[] {
  return idsOf(columns, "table").flatMap((id) => {
    const tables = columns.map((entered) => {
      const value = entered[id];
      return typeof value === "object" ? value : initial(id);
    });
    const [first] = tables;
    if (first === undefined) return [];
    const rows = tables.map((table) => rowDifferences(first, table));
    return rows.some(hasAny) ? [{ id, rows }] : [];
  });
}

function idsOf(columns: readonly Entered[], what: "text" | "table"): readonly CellId[] {
  const type = what === "text" ? "string" : "object";
  const ids = columns.flatMap((entered) =>
    (Object.entries(entered) as [CellId, unknown][])
      .filter(([, value]) => typeof value === type)
      .map(([id]) => id),
  );
  return [...new Set(ids)];
}

/** Which rows are not the same: matched by their first field where it names them, else by place. */
export function rowDifferences(from: TableText, to: TableText): RowDifferences {
  const columns = from.columns.join("\n") !== to.columns.join("\n");
  const [before, after] =
    named(from.rows) && named(to.rows) ? [keyed(from), keyed(to)] : [placed(from), placed(to)];
  const changed = [...after].filter(
    ([key, row]) => before.has(key) && textOf(before.get(key)) !== textOf(row),
  );
  return {
    changed: changed.map(([key]) => key),
    added: [...after.keys()].filter((key) => !before.has(key)),
    gone: [...before.keys()].filter((key) => !after.has(key)),
    columns,
  };
}

type Rows = TableText["rows"];

function named(rows: Rows): boolean {
  const names = rows.map(([name = ""]) => name.trim());
  return names.every((name) => name !== "") && new Set(names).size === names.length;
}

const keyed = ({ rows }: TableText) => new Map(rows.map((row) => [(row[0] ?? "").trim(), row]));
const placed = ({ rows }: TableText) =>
  new Map(rows.map((row, index) => [`row ${index + 1}`, row]));
const textOf = (row: readonly string[] | undefined) =>
  (row ?? []).map((text) => text.trim()).join("\n");

function hasAny({ changed, added, gone, columns }: RowDifferences): boolean {
  return columns || changed.length + added.length + gone.length > 0;
}

/** "2 rows differ: A, B; 1 more: C"; "the same" where nothing differs. */
export function rowWords(rows: RowDifferences): string {
  const { changed, added, gone, columns } = rows;
  const parts = [
    listed(changed, changed.length === 1 ? "row differs" : "rows differ"),
    listed(added, "more"),
    listed(gone, "fewer"),
    columns ? "other columns" : "",
  ].filter((words) => words !== "");
  return parts.length === 0 ? "the same" : parts.join("; ");
}

/** So many are named; the rest are counted. */
const mostNamed = 6;

function listed(names: readonly string[], words: string): string {
  if (names.length === 0) return "";
  const rest = names.length - mostNamed;
  const more = rest > 0 ? ` and ${rest} more` : "";
  return `${names.length} ${words}: ${names.slice(0, mostNamed).join(", ")}${more}`;
}
