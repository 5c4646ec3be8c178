import type { Shown, ShownCaution, TableText } from "../types/index.ts";
import { cautionView } from "./caution-view.ts";
import { el } from "./dom.ts";
import { DrawingView } from "./drawing-view.ts";
import { figureNodes } from "./figure-text.ts";
import { figureOfText } from "./moves.ts";
import { figureParts } from "./result-row.ts";
import type { Sources } from "./sources.ts";
import { TableView } from "./table-view.ts";

/**
 * A value that is no single figure: its parts as rows of the ruled page, tables and drawings across
 * it. A drawing or a table that was there keeps its place and is only drawn anew.
 */
export class ShownView {
  readonly element = el("div", { class: "parts" });
  private readonly sources: Sources;
  private drawing: DrawingView | undefined;
  private table: TableView | undefined;
  private last = "";

  constructor(sources: Sources) {
    this.sources = sources;
  }

  show(shown: Shown, title: string): void {
    const key = JSON.stringify(shown);
    if (key === this.last) return;
    this.last = key;
    if (shown.kind === "drawing") {
      this.drawing ??= new DrawingView();
      this.hold(this.drawing.element);
      this.drawing.show(shown.drawing);
    } else if (shown.kind === "table") {
      this.table ??= new TableView();
      this.hold(this.table.element);
      this.table.show(shown, title);
    } else this.element.replaceChildren(...partsOf(shown, title, this.sources));
  }

  private hold(part: HTMLElement): void {
    if (part.parentElement !== this.element || this.element.childElementCount > 1)
      this.element.replaceChildren(part);
  }
}

function partsOf(shown: Shown, title: string, sources: Sources): HTMLElement[] {
  switch (shown.kind) {
    case "nothing":
      return [];
    case "figure":
      return [rowOf(title, figureParts(shown.figure))];
    case "text":
      return [textRow(title, shown.text)];
    case "table":
      return [tablePart(shown, title)];
    case "rows-for":
    case "table-text":
      return [tablePart(plainTable(shown), title)];
    case "record":
      return [
        nameRow(title),
        ...shown.fields.flatMap((field) => partsOf(field.shown, field.title, sources)),
      ];
    case "list":
      return listParts(shown, title, sources);
    case "drawing":
      return [drawingPart(shown)];
    case "cautions":
      return cautionParts(shown.cautions, sources);
  }
}

export function rowOf(title: string, value: readonly HTMLElement[]): HTMLElement {
  return el(
    "div",
    { class: "row" },
    el("div", { class: "what" }, el("span", { class: "name" }, title)),
    el("div", { class: "val" }, ...value),
  );
}

function nameRow(title: string): HTMLElement {
  return el("p", { class: "cap partname" }, title);
}

function textRow(title: string, text: string): HTMLElement {
  if (text.length <= 24 && !text.includes("\n")) {
    const figure = figureOfText(text);
    return rowOf(title, figureParts(figure, undefined, figure.unit === "" ? "words" : ""));
  }
  return el(
    "div",
    { class: "row words" },
    el("div", { class: "what" }, el("span", { class: "name" }, title)),
    el("p", { class: "said" }, ...figureNodes(text)),
  );
}

type ShownList = Extract<Shown, { readonly kind: "list" }>;

function listParts({ items, more }: ShownList, title: string, sources: Sources): HTMLElement[] {
  const plain = items.every(({ kind }) => kind === "text" || kind === "figure");
  const rest = more > 0 ? el("p", { class: "foot-note" }, `and ${more} more`) : undefined;
  if (!plain) {
    const parts = items.flatMap((item, index) => partsOf(item, `${title}, ${index + 1}`, sources));
    return rest ? [...parts, rest] : parts;
  }
  if (items.length === 0) return [rowOf(title, [el("span", { class: "n words" }, "none")])];
  const lines = items.map((item) => {
    const text = item.kind === "figure" ? item.figure.text : item.kind === "text" ? item.text : "";
    return el("li", {}, ...figureNodes(text));
  });
  return [
    el(
      "div",
      { class: "row words" },
      el("div", { class: "what" }, el("span", { class: "name" }, title)),
      el("ul", { class: "lines" }, ...lines),
    ),
    ...(rest ? [rest] : []),
  ];
}

function tablePart(shown: Extract<Shown, { readonly kind: "table" }>, title: string): HTMLElement {
  const view = new TableView();
  view.show(shown, title);
  return view.element;
}

function drawingPart({ drawing }: Extract<Shown, { readonly kind: "drawing" }>): HTMLElement {
  const view = new DrawingView();
  view.show(drawing);
  return view.element;
}

function cautionParts(cautions: readonly ShownCaution[], sources: Sources): HTMLElement[] {
  return cautions.map((caution) =>
    el("div", { class: "wide said" }, cautionView(caution, sources)),
  );
}

/** A table of texts that is a result, not an entry. */
export function plainTable({ columns, rows }: Pick<TableText, "columns" | "rows">) {
  return {
    kind: "table" as const,
    columns: columns.map((title) => ({ key: title, title, unit: "", align: "left" as const })),
    rows: rows.map((row) => row.map((text) => ({ text, number: text, unit: "" }))),
    more: 0,
  };
}
