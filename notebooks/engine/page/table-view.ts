import type { Figure, Shown, ShownColumn } from "../types/index.ts";
import { el, freshId } from "./dom.ts";
import { figureNodes } from "./figure-text.ts";

type ShownTable = Extract<Shown, { readonly kind: "table" }>;

/** Rows beyond this many are drawn only when asked for. */
const atFirst = 200;

/** A table of results: words left, figures right, the unit in the head where a column shares it. */
export function tableView(table: ShownTable, title: string): HTMLElement {
  const { columns, rows, more } = table;
  const bill = endsInMoney(table);
  const body = el("tbody");
  const draw = (from: number, to: number) =>
    body.append(...rows.slice(from, to).map((row) => rowView(row, columns, bill)));
  draw(0, atFirst);
  const captionId = freshId("table");
  const made = el(
    "table",
    { class: bill ? "led bill" : "led" },
    el("caption", { id: captionId }, title),
    el("thead", {}, el("tr", {}, ...columns.map(headView))),
    body,
  );
  const holder = el(
    "div",
    {
      class: bill ? "scroll billwrap" : "scroll",
      role: "region",
      "aria-labelledby": captionId,
      tabindex: 0,
    },
    made,
  );
  const foot = el("p", { class: "foot-note" });
  const left = rows.length - atFirst;
  if (left > 0) {
    const all = el("button", { type: "button" }, `Show ${left} more rows`);
    all.addEventListener("click", () => {
      draw(atFirst, rows.length);
      all.remove();
      holder.focus();
    });
    foot.append(all, " ");
  }
  if (more > 0) foot.append(`${more} more rows are not drawn here.`);
  return el("div", { class: "wide" }, holder, foot.childNodes.length > 0 ? foot : undefined);
}

function headView({ title, unit, align }: ShownColumn): HTMLElement {
  return el(
    "th",
    { scope: "col", class: align === "left" ? "l" : undefined },
    title,
    unit === "" ? undefined : " ",
    unit === "" ? undefined : el("span", { class: "u" }, unit),
  );
}

function rowView(
  row: readonly Figure[],
  columns: readonly ShownColumn[],
  bill: boolean,
): HTMLElement {
  const cells = columns.map(({ align, unit }, index) => {
    const figure = row[index];
    const text = figure === undefined ? "" : unit === "" ? figure.text : figure.number;
    const nodes = figureNodes(text);
    const left = align === "left" ? "l" : undefined;
    if (index > 0) return el("td", { class: left }, ...nodes);
    const box = bill ? el("span", { class: "do", "aria-hidden": "true" }) : undefined;
    return el("th", { scope: "row", class: left }, box, ...nodes);
  });
  return el("tr", {}, ...cells);
}

/** A bill: its last column is money, and there is one line or more to pay. */
function endsInMoney({ columns, rows }: ShownTable): boolean {
  const last = columns.length - 1;
  return (
    columns.length > 1 &&
    rows.length > 0 &&
    columns[last]?.align === "right" &&
    rows.some((row) => /^[−-]?\p{Sc}/u.test(row[last]?.text ?? "")) &&
    rows.every((row) => /^$|^[−-]?\p{Sc}|\p{Sc}$|no price/u.test(row[last]?.text ?? ""))
  );
}
