import type { CellId, CellState, OutlineCell } from "../types/index.ts";
import type { CellView, Context } from "./context.ts";
import { button, el, freshId } from "./dom.ts";
import { type EntryField, entryField } from "./entry-field.ts";
import { figureNodes } from "./figure-text.ts";
import { mainFigure } from "./moves.ts";
import { WorkingView } from "./working.ts";

/**
 * What stands in a sentence for a name: an entry's tray, or a figure that opens its working under
 * the paragraph when it is chosen.
 */
export class SentenceView implements CellView {
  readonly element = el("span", { class: "insentence" });
  private readonly id: CellId;
  private readonly context: Context;
  private field: EntryField | undefined;
  private figure: HTMLButtonElement | undefined;
  private working: WorkingView | undefined;
  private readonly refusedId = freshId("refused");
  private readonly refused = el("span", { class: "refused", id: this.refusedId, hidden: true });
  private kind = "";

  constructor(id: CellId, context: Context) {
    this.id = id;
    this.context = context;
    this.element.append("…");
  }

  update(state: CellState | undefined, outline: OutlineCell | undefined): void {
    if (state?.entry) this.showEntry(state);
    else if (state) this.showFigure(state, outline);
  }

  private showEntry(state: CellState): void {
    const { entry } = state;
    if (!entry) return;
    const { context, id } = this;
    const kind = `${entry.entry} ${entry.options?.length ?? 0}`;
    if (kind !== this.kind) {
      this.kind = kind;
      this.field = entryField(entry, {
        place: "sentence",
        name: context.book.title(id),
        entered: (text) => context.enter(id, text),
      });
      this.element.replaceChildren(this.field.element, this.refused);
    }
    this.field?.show(entry, context.book.text(id, entry.initial));
    const said = entry.problem?.sentence ?? context.problems.of(id)[0]?.sentence;
    this.refused.textContent = said ?? "";
    this.refused.hidden = said === undefined;
    this.field?.refuse(said === undefined ? undefined : this.refusedId);
  }

  private showFigure(state: CellState, outline: OutlineCell | undefined): void {
    const words = wordsOf(state);
    const { context, id } = this;
    if (!this.figure) {
      this.figure = button("", () => this.toggle(), { class: "fig", "aria-expanded": "false" });
      this.element.replaceChildren(this.figure);
    }
    this.figure.replaceChildren(...figureNodes(words));
    this.figure.setAttribute("aria-label", `${words}, ${context.book.title(id)}: working`);
    this.figure.classList.toggle("unknown", state.error !== undefined);
    this.figure.classList.toggle("moved", context.driver.moves.was(id) !== undefined);
    this.working?.update(state, outline);
  }

  /** The working opens in place, under the paragraph, and pushes the page down. */
  private toggle(): void {
    if (this.working) {
      this.working.element.parentElement?.remove();
      this.working = undefined;
      this.figure?.setAttribute("aria-expanded", "false");
      return;
    }
    const { context, id } = this;
    const working = new WorkingView(id, context);
    this.working = working;
    working.element.open = true;
    const block = this.element.closest("p, li, td, h1, h2, h3, h4, blockquote") ?? this.element;
    const below = el(
      "div",
      { class: "fromsentence" },
      button(context.book.title(id), () => context.goTo(id), { class: "lnk name" }),
      working.element,
    );
    (block.closest("ul, ol, table") ?? block).after(below);
    working.update(context.book.states.get(id), context.book.outline.get(id));
    this.figure?.setAttribute("aria-expanded", "true");
  }
}

function wordsOf({ shown, error }: CellState): string {
  if (error) return error.kind === "waits" ? "not known yet" : "not known";
  const figure = mainFigure(shown);
  if (figure) return figure.text;
  if (shown?.kind === "text") return shown.text;
  if (shown?.kind === "table") return `${shown.rows.length + shown.more} rows`;
  if (shown?.kind === "table-text") return `${shown.rows.length} rows`;
  if (shown?.kind === "list") return String(shown.items.length + shown.more);
  return shown?.kind === "cautions" ? String(shown.cautions.length) : "nothing";
}
