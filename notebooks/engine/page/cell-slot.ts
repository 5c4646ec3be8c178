import type { CellId, CellState, OutlineCell, Shown } from "../types/index.ts";
import { cautionView, distinct } from "./caution-view.ts";
import { CellName, slipsFollow } from "./cell-name.ts";
import type { CellView, Context } from "./context.ts";
import { CutShortView } from "./cut-short-view.ts";
import { el, idFrom } from "./dom.ts";
import { EditableTable } from "./editable-table.ts";
import { EntryRow } from "./entry-row.ts";
import { errorView } from "./error-view.ts";
import { OfferView } from "./offer-view.ts";
import { ProgressView } from "./progress-view.ts";
import { ResultRow } from "./result-row.ts";
import { ShownView } from "./shown-view.ts";
import { WorkingView } from "./working.ts";

/** The id of the element a cell is drawn in. */
export const slotId = (id: CellId) => idFrom("cell", id);

/**
 * The place of one cell on the page. What stands in it depends on the cell's value: an entry, a
 * result in a row, parts across the page, an error; its cautions stand under it.
 */
export class CellSlot implements CellView {
  readonly element: HTMLElement;
  private readonly id: CellId;
  private readonly context: Context;
  private readonly name: CellName;
  private readonly holder = el("div", { class: "held" });
  private readonly aside = el("div", { class: "asides" });
  private readonly progress: ProgressView;
  private readonly cutShort: CutShortView;
  private inner: CellView | undefined;
  private kind = "";
  private cautions = "";
  private block = "";

  constructor(id: CellId, context: Context) {
    this.id = id;
    this.context = context;
    this.name = new CellName(id, context);
    this.progress = new ProgressView(context);
    this.cutShort = new CutShortView(id, context);
    this.element = el(
      "div",
      { class: "cell", id: slotId(id), tabindex: -1 },
      this.name.element,
      this.name.holder,
      this.progress.element,
      this.cutShort.element,
      this.aside,
    );
    this.reblock();
  }

  /** The cell's block in the document may have other hints now, or be a table instead of a cell. */
  reblock(): void {
    slipsFollow();
    const { book } = this.context;
    const block = book.block(this.id);
    const now = JSON.stringify([block?.kind, block?.hints]);
    if (now === this.block) return;
    this.block = now;
    this.element.classList.toggle("quiet", block?.hints.quiet === true);
    for (const child of [...this.element.children])
      if (child === this.holder || child.classList.contains("fold")) child.remove();
    this.name.holder.after(this.folded());
    this.kind = "";
    if (block?.kind === "table")
      this.become("entry table", () => new EditableTable(this.id, this.context));
    const state = book.states.get(this.id);
    if (state) this.update(state, book.outline.get(this.id));
  }

  update(state: CellState | undefined, outline: OutlineCell | undefined): void {
    if (state) this.show(state, outline);
    this.cutShort.show(state);
    this.element.classList.toggle("hasvalue", state !== undefined);
    this.showBusy();
    this.showCautions(state);
    slipsFollow();
  }

  /** Long work reports how far it is. */
  goesOn(words: string, fraction: number | undefined): void {
    this.progress.show(words, fraction);
  }

  showBusy(): void {
    const busy = this.context.book.working.has(this.id);
    this.element.classList.toggle("busy", busy);
    if (busy) this.holder.setAttribute("aria-busy", "true");
    else {
      this.holder.removeAttribute("aria-busy");
      this.progress.hide();
    }
  }

  /** What is long and seldom read whole is folded, and a step between in the writing view. */
  private folded(): HTMLElement {
    const { book } = this.context;
    const { folded, quiet } = book.block(this.id)?.hints ?? {};
    if (!folded && !quiet) return this.holder;
    const title = el("summary", {}, el("b", {}, book.title(this.id)));
    return el("details", { class: "fold" }, title, this.holder);
  }

  private show(state: CellState, outline: OutlineCell | undefined): void {
    const { context, id } = this;
    if (context.book.isTable(id)) {
      this.inner?.update(state, outline);
      return;
    }
    if (state.entry) this.become("entry", () => new EntryRow(id, context));
    else if (state.error) {
      this.showError(state, outline);
      return;
    } else if (state.shown?.kind === "rows-for")
      this.become("offer", () => new OfferView(id, context));
    else if (state.shown && isRow(state.shown))
      this.become("result", () => new ResultRow(id, context));
    else this.become("parts", () => this.partsView());
    this.inner?.update(state, outline);
  }

  private become(kind: string, make: () => CellView): void {
    if (this.kind === kind) return;
    this.kind = kind;
    this.inner = make();
    this.holder.replaceChildren(this.inner.element);
    this.element.dataset.kind = kind;
  }

  private showError({ error }: CellState, outline: OutlineCell | undefined): void {
    if (!error) return;
    this.kind = "error";
    this.inner = undefined;
    this.element.dataset.kind = error.kind === "waits" ? "waits" : "error";
    this.holder.replaceChildren(errorView(error, outline, this.id, this.context));
  }

  /** Parts across the page, with the cell's working under them. */
  private partsView(): CellView {
    const { context, id } = this;
    const parts = new ShownView(context.sources);
    const working = new WorkingView(id, context);
    const left = el("p", { class: "hint left-out", hidden: true });
    return {
      element: el("div", { class: "parted" }, parts.element, left, working.element),
      update(state, outline) {
        if (state?.shown) parts.show(state.shown, context.book.title(id));
        left.textContent = state?.leftOut ?? "";
        left.hidden = state?.leftOut === undefined;
        working.update(state, outline);
        if (state?.shown?.kind === "nothing" || state?.shown?.kind === "cautions")
          working.element.hidden = true;
      },
    };
  }

  private showCautions(state: CellState | undefined): void {
    const cautions = state?.shown?.kind === "cautions" ? [] : distinct(state?.cautions ?? []);
    const key = JSON.stringify(cautions);
    if (key === this.cautions) return;
    this.cautions = key;
    this.aside.replaceChildren(
      ...cautions.map((caution) => cautionView(caution, this.context.sources)),
    );
  }
}

/** A figure, or words short enough for the figures' column. */
function isRow(shown: Shown): boolean {
  return (
    shown.kind === "figure" ||
    (shown.kind === "text" && shown.text.length <= 24 && !shown.text.includes("\n"))
  );
}
