import type { Figure, Shown, ShownColumn } from "../types/index.ts";
import { button, el, freshId } from "./dom.ts";
import { figureNodes } from "./figure-text.ts";
import { onPaper } from "./on-paper.ts";
import { signAtSide } from "./side-sign.ts";

type ShownTable = Extract<Shown, { readonly kind: "table" }>;

/** A longer table is folded to its first rows; the rest is drawn when asked for, and on paper. */
const foldedFrom = 40;
const shownFolded = 24;

/**
 * A table of results: words left, figures right, the unit in the head where a column shares it.
 * Shown anew it keeps its place, its sideways scroll and whether it is folded.
 */
export class TableView {
  readonly element = el("div", { class: "wide" });
  private readonly caption = el("caption", { id: freshId("table") });
  private readonly head = el("tr");
  private readonly body = el("tbody");
  private readonly table = el("table", {}, this.caption, el("thead", {}, this.head), this.body);
  private readonly holder = el(
    "div",
    { role: "group", "aria-labelledby": this.caption.id, tabindex: 0 },
    this.table,
  );
  private readonly toggle = button("", () => this.turn(), { "aria-expanded": "false" });
  private readonly rest = el("span");
  private readonly foot = el("p", { class: "foot-note" }, this.toggle, " ", this.rest);
  private shown: ShownTable = { kind: "table", columns: [], rows: [], more: 0 };
  private open = false;
  private bill = false;

  constructor() {
    this.element.append(signAtSide(this.holder), this.holder, this.foot);
    onPaper(this.element, {
      begin: () => this.draw(this.shown.rows.length),
      end: () => this.draw(this.count),
    });
  }

  show(table: ShownTable, title: string): void {
    const { columns, rows, more } = table;
    this.shown = table;
    this.bill = endsInMoney(table);
    this.caption.textContent = title;
    this.head.replaceChildren(...columns.map(headView));
    this.table.className = this.bill ? "led bill" : "led";
    this.holder.className = this.bill ? "scroll billwrap" : "scroll";
    this.rest.textContent = more > 0 ? `${more} more rows are not drawn here.` : "";
    this.toggle.hidden = rows.length <= foldedFrom;
    this.foot.hidden = this.toggle.hidden && more === 0;
    this.sayToggle();
    this.draw(this.count);
  }

  /** On paper, what is bought has a box to tick: lines with a price, not any sum of money. */
  private get ticked(): boolean {
    return this.bill && this.shown.columns.some(({ key }) => key === "price");
  }

  private get count(): number {
    const { length } = this.shown.rows;
    return this.open || length <= foldedFrom ? length : shownFolded;
  }

  private turn(): void {
    this.open = !this.open;
    this.sayToggle();
    this.draw(this.count);
  }

  private sayToggle(): void {
    const left = this.shown.rows.length - shownFolded;
    const words = this.open ? `Show only ${shownFolded} rows` : `Show ${left} more rows`;
    this.toggle.textContent = left > 0 ? words : "";
    this.toggle.setAttribute("aria-expanded", String(this.open));
  }

  private draw(count: number): void {
    const { rows, columns } = this.shown;
    this.body.replaceChildren(
      ...rows.slice(0, count).map((row) => rowView(row, columns, this.ticked)),
    );
  }
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
  ticked: boolean,
): HTMLElement {
  const cells = columns.map(({ align, unit }, index) => {
    const figure = row[index];
    const text = figure === undefined ? "" : unit === "" ? figure.text : figure.number;
    const nodes = figureNodes(text);
    const left = align === "left" ? (text.length > 24 ? "l long" : "l") : undefined;
    if (index > 0) return el("td", { class: left }, ...nodes);
    const box = ticked ? el("span", { class: "do", "aria-hidden": "true" }) : undefined;
    // A row that goes on with what the row above names has no name of its own.
    if (text === "") return el("td", { class: left }, box);
    return el("th", { scope: "row", class: left }, box, ...nodes);
  });
  return el("tr", {}, ...cells);
}

/** A bill: things with their counts or prices, and money in the last column. */
function endsInMoney({ columns, rows }: ShownTable): boolean {
  const last = columns.length - 1;
  return (
    columns.length > 2 &&
    rows.length > 0 &&
    columns[last]?.align === "right" &&
    rows.some((row) => /^[−-]?\p{Sc}/u.test(row[last]?.text ?? "")) &&
    rows.every((row) => /^$|^[−-]?\p{Sc}|\p{Sc}$|no price/u.test(row[last]?.text ?? ""))
  );
}
