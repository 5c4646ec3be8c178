import type { TableText } from "../../types/index.ts";

/** The table with a column more at its end, blank in every row. */
export function withColumn(table: TableText, name: string): TableText {
  return {
    ...table,
    columns: [...table.columns, name],
    rows: table.rows.map((row) => [...filled(row, table.columns.length), ""]),
  };
}

/** The table with another name over a column. */
export function withColumnNamed(table: TableText, at: number, name: string): TableText {
  return { ...table, columns: table.columns.map((old, index) => (index === at ? name : old)) };
}

/** The table without a column and what stood in it. */
export function withoutColumn(table: TableText, at: number): TableText {
  const others = <T>(list: readonly T[]) => list.filter((_, index) => index !== at);
  return { ...table, columns: others(table.columns), rows: table.rows.map((row) => others(row)) };
}

/** Why a column can't be called so; undefined where it can. */
export function wrongColumn(name: string, others: readonly string[]): string | undefined {
  if (name === "") return "Write a name for the column.";
  if (others.includes(name)) return `There is a column ${name} already: give it another name.`;
  return undefined;
}

function filled(row: readonly string[], length: number): readonly string[] {
  return [...row, ...Array.from({ length: Math.max(0, length - row.length) }, () => "")];
}
