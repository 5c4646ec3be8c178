import type { CellId, CellState, OutlineCell, Shown } from "../types/index.ts";
import { partsOf } from "./book.ts";
import type { CellView, Context } from "./context.ts";
import { button, el } from "./dom.ts";
import { missingRows, withRows } from "./offered-rows.ts";
import { plainTable } from "./shown-view.ts";
import { TableView } from "./table-view.ts";
import { WorkingView } from "./working.ts";

type Offer = Extract<Shown, { readonly kind: "rows-for" }>;

const nothing: Offer = { kind: "rows-for", table: "", columns: [], rows: [] };

/**
 * Rows that a formula offers to a table of the reader's. They stand here to be read; the button that
 * adds them is the page's own, and what it does can be undone like any other change.
 */
export class OfferView implements CellView {
  readonly element = el("div", { class: "parted" });
  private readonly id: CellId;
  private readonly context: Context;
  private readonly table = new TableView();
  private readonly add = button("", () => this.addRows());
  private readonly note = el("p", { class: "note" });
  private readonly working: WorkingView;
  private offer = nothing;

  constructor(id: CellId, context: Context) {
    this.id = id;
    this.context = context;
    this.working = new WorkingView(id, context);
    const acts = el("p", { class: "acts" }, this.add);
    this.element.append(this.table.element, acts, this.note, this.working.element);
    // The table may be filled elsewhere; a view that is off the page has nothing to follow.
    let wasShown = false;
    const stop = context.watch(() => {
      const { isConnected } = this.element;
      if (isConnected) this.offerWhatIsMissing();
      else if (wasShown) stop();
      wasShown = isConnected;
    });
  }

  update(state: CellState | undefined, outline: OutlineCell | undefined): void {
    const { shown } = state ?? {};
    if (shown?.kind === "rows-for") {
      this.offer = shown;
      this.table.show(plainTable(shown), this.context.book.title(this.id));
    }
    this.offerWhatIsMissing();
    this.working.update(state, outline);
  }

  /** The table that the name stands for where the cell is written. */
  private get target(): CellId | undefined {
    const { book } = this.context;
    const [file] = partsOf(this.id);
    const found = book.find(this.offer.table, file);
    return found !== undefined && book.isTable(found) ? found : undefined;
  }

  private offerWhatIsMissing(): void {
    const { target, offer, context } = this;
    const none = offer.rows.length === 0;
    if (target === undefined) {
      this.add.hidden = true;
      this.note.textContent = none ? "" : `This notebook has no table named ${offer.table}.`;
      return;
    }
    const { rows } = missingRows(context.book.table(target), offer);
    const title = lowered(context.book.title(target));
    this.add.hidden = rows.length === 0;
    this.add.textContent = `Add to ${title}`;
    if (none) this.note.textContent = "There is nothing to add.";
    else if (rows.length === 0) this.note.textContent = `All of it stands in ${title}.`;
    else {
      const there = offer.rows.length - rows.length;
      const rest =
        there > 0 ? `; ${counted(there)} more ${there === 1 ? "stands" : "stand"} there` : "";
      this.note.textContent = `${counted(rows.length)} to add${rest}. Undo takes them out again.`;
    }
  }

  private addRows(): void {
    const { target, context } = this;
    if (target === undefined) return;
    const table = context.book.table(target);
    const missing = missingRows(table, this.offer);
    if (missing.rows.length === 0) return;
    context.enterAll(new Map([[target, withRows(table, missing)]]));
    const title = lowered(context.book.title(target));
    context.say(`${counted(missing.rows.length)} added to ${title}. Undo takes them out again.`);
    this.offerWhatIsMissing();
  }
}

const counted = (rows: number): string => `${rows} ${rows === 1 ? "row" : "rows"}`;

/** A title within a sentence: "Boards kept" is "boards kept", "USDA zones" stays. */
function lowered(title: string): string {
  return /^\p{Lu}\p{Ll}/u.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}
