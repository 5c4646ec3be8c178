import { rowDifferences, rowWords } from "../../plans/index.ts";
import type { LinkRecord } from "../../share/index.ts";
import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { el } from "../dom.ts";

/** What a link holds, as a list people can check before they send it. */
export function heldInWords(record: LinkRecord, { book }: Context): HTMLElement[] {
  const entries = record.entries.map(({ file, name, text }) =>
    item(book.title(idOf(file, name)), text === "" ? "left empty" : text),
  );
  const tables = record.tables.map(({ file, name }) => {
    const id = idOf(file, name);
    return item(book.title(id), rowWords(rowDifferences(book.defaultTable(id), book.table(id))));
  });
  const texts = record.own.map(({ file }) =>
    item(book.documents.get(file)?.title ?? file, "the whole text of this notebook of yours"),
  );
  const all = [...texts, ...entries, ...tables];
  if (all.length === 0)
    return [el("p", {}, "Nothing is changed: the link opens the notebook as it comes.")];
  return [
    el("p", {}, "Whoever opens it gets the notebook with these, and can read them:"),
    el("dl", { class: "held-list" }, ...all),
  ];
}

const idOf = (file: string, name: string): CellId => `${file}#${name}`;

function item(title: string, words: string): HTMLElement {
  return el("div", {}, el("dt", {}, title), el("dd", {}, words));
}
