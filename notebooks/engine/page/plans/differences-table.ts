import { rowWords } from "../../plans/index.ts";
import type { CellId, EntryKind } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { el } from "../dom.ts";
import { figureNodes } from "../figure-text.ts";
import { type Column, differencesOf, initialOf, withoutCell } from "./columns.ts";
import { titlesOf } from "./titles.ts";

/** What the plans hold and the notebook has no place for, in words; nothing of it is lost. */
export function heldInVain({ book }: Context, columns: readonly Column[]): HTMLElement[] {
  return columns.flatMap(({ plan }) => {
    const ids = plan ? withoutCell(plan, book) : [];
    if (!plan || ids.length === 0) return [];
    const said = ids.map((id) => {
      const value = plan.entered[id];
      return `${id.slice(id.indexOf("#") + 1)} (${typeof value === "string" ? value : "a table"})`;
    });
    return [
      el(
        "p",
        { class: "foot-note" },
        `${plan.name} also holds what this notebook has no cell for: ${said.join(", ")}. It stays in the plan and counts for nothing.`,
      ),
    ];
  });
}

/** The entries that are not the same in all columns, with the text of each; then the tables. */
export function differencesTable(context: Context, columns: readonly Column[]): HTMLElement[] {
  const titleOf = titlesOf(context.book);
  const { entries, tables } = differencesOf(
    context,
    columns.map(({ entered }) => entered),
  );
  if (entries.length + tables.length === 0)
    return [el("p", { class: "foot-note" }, "The same is entered in all of them.")];
  const initial = initialOf(context);
  const rows = entries.map(({ id, texts }) =>
    rowOf(
      titleOf(id),
      texts.map((text) => ({
        words: wordsOf(context, id, text),
        note: text.trim() === initial(id).trim() ? "as the notebook has it" : "",
      })),
      columns,
    ),
  );
  const tableRows = tables.map(({ id, rows: found }) =>
    rowOf(
      `Table: ${titleOf(id)}`,
      found.map((one, at) => ({
        words: at === 0 ? tableSize(context, id, columns[0]) : rowWords(one),
        note: at === 0 ? "" : "beside the first column",
      })),
      columns,
    ),
  );
  const head = columns.map(({ name, plan }) =>
    el("th", { scope: "col", class: plan ? "l" : "l inuse" }, name),
  );
  const table = el(
    "table",
    { class: "led planled differences" },
    el("caption", {}, "What is entered, where it differs"),
    el("thead", {}, el("tr", {}, el("th", { scope: "col", class: "l" }, "Entry"), ...head)),
    el("tbody", {}, ...rows, ...tableRows),
  );
  const region = {
    class: "scroll",
    role: "group",
    "aria-label": "Entries that differ",
    tabindex: 0,
  };
  return [el("div", region, table)];
}

function rowOf(
  title: string,
  cells: readonly { readonly words: string; readonly note: string }[],
  columns: readonly Column[],
): HTMLElement {
  return el(
    "tr",
    {},
    el("th", { scope: "row", class: "l" }, title),
    ...cells.map(({ words, note }, at) =>
      el(
        "td",
        { class: columns[at]?.plan ? "l" : "l inuse" },
        el("span", { class: "typed" }, ...figureNodes(words)),
        note !== "" && el("small", {}, note),
      ),
    ),
  );
}

function tableSize({ book }: Context, id: CellId, column: Column | undefined): string {
  const held = column?.entered[id];
  const { rows } = typeof held === "object" ? held : book.defaultTable(id);
  return rows.length === 1 ? "1 row" : `${rows.length} rows`;
}

const withUnit: ReadonlySet<EntryKind> = new Set(["length", "area", "volume", "mass", "percent"]);

/** The text of an entry as a person reads it: a choice by its label, a bare number with its unit. */
export function wordsOf({ book }: Context, id: CellId, text: string): string {
  const entry = book.states.get(id)?.entry;
  const option = entry?.options?.find((one) => one.text.trim() === text.trim());
  if (option) return option.label;
  if (text.trim() === "") return "blank";
  const isBare = /^[\d\s.,/½¼¾-]+$/.test(text) && entry !== undefined && withUnit.has(entry.entry);
  return isBare && entry.unit ? `${text.trim()} ${entry.unit}` : text;
}
