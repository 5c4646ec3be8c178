import { show, type WholeTable, wholeTable } from "../run/index.ts";
import type { Host, Shown, ShownCaution, Units } from "../types/index.ts";
import type { Outcome } from "./outcome.ts";

/** A cell as people read it: a line, or its title over its table or parts. */
export function textOf({ cell, state, value }: Outcome, host: Host, units: Units): string {
  const { title } = cell.hints;
  if (state?.entry) {
    const { text, printed } = state.entry;
    return `${title}: ${text}${printed ? ` (${printed.text})` : ""}`;
  }
  // A quiet cell's state shows only its beginning; whoever asks for it here wants all.
  const shown = cell.hints.quiet ? show(value, host, units) : state?.shown;
  const table = shown?.kind === "cautions" ? undefined : wholeTable(value, host, units);
  const lines = table ? tableLines(table) : shown ? linesOf(shown) : [];
  const [first = "", ...more] = lines;
  const isOne = table === undefined && more.length === 0 && shown?.kind !== "record";
  const head = isOne ? [`${title}: ${first}`.trimEnd()] : [title, ...lines.map(indented)];
  const given = shown?.kind === "cautions" ? [] : (state?.cautions ?? []);
  return [...head, ...given.flatMap(cautionLines).map(indented)].join("\n");
}

function indented(line: string): string {
  return line === "" ? "" : `  ${line}`;
}

function tableLines({ columns, rows }: Pick<WholeTable, "columns" | "rows">): readonly string[] {
  if (columns.length === 0) return ["(no rows)"];
  const all = [columns.map(({ title }) => title), ...rows];
  const widths = columns.map((_, at) => widest(all, at));
  return all.map((row) =>
    columns
      .map(({ align }, at) => {
        const text = row[at] ?? "";
        const width = widths[at] ?? 0;
        return align === "right" ? text.padStart(width) : text.padEnd(width);
      })
      .join("  ")
      .trimEnd(),
  );
}

/** Without spreading: a table may have more rows than a call takes arguments. */
function widest(rows: readonly (readonly string[])[], at: number): number {
  return rows.reduce((width, row) => Math.max(width, (row[at] ?? "").length), 0);
}

function linesOf(shown: Shown): readonly string[] {
  switch (shown.kind) {
    case "nothing":
      return ["nothing"];
    case "figure":
      return [shown.figure.text];
    case "text":
      return shown.text.split("\n");
    case "record":
      return shown.fields.flatMap(({ title, shown: part }) => under(title, part));
    case "list":
      return [
        ...shown.items.flatMap(linesOf),
        ...(shown.more > 0 ? [`and ${shown.more} more`] : []),
      ];
    case "drawing":
      return [`(drawing) ${shown.drawing.alternative || shown.drawing.title}`];
    case "cautions":
      return shown.cautions.length === 0 ? ["none"] : shown.cautions.flatMap(cautionLines);
    case "table":
      return tableLines({
        columns: shown.columns,
        rows: shown.rows.map((row) => row.map(({ text }) => text)),
      });
    case "rows-for":
      return [
        `rows for the table ${shown.table}:`,
        ...tableLines({
          columns: shown.columns.map((key) => ({ key, title: key, unit: "", align: "left" })),
          rows: shown.rows,
        }),
      ];
    case "table-text":
      return tableLines({
        columns: shown.columns.map((key) => ({ key, title: key, unit: "", align: "left" })),
        rows: shown.rows,
      });
  }
}

function under(title: string, part: Shown): readonly string[] {
  const lines = linesOf(part);
  const [first = ""] = lines;
  return lines.length <= 1 ? [`${title}: ${first}`] : [title, ...lines.map(indented)];
}

function cautionLines({ fact, advice, defersTo, because }: ShownCaution): readonly string[] {
  const why = because === undefined || because === "" ? "" : ` (${because})`;
  return [`Caution: ${fact}${why}`, `  ${advice}${defersTo === "" ? "" : ` ${defersTo}`}`];
}
