import type { CellId, CellState } from "../types/index.ts";
import type { CellView, Context } from "./context.ts";
import { button, el, freshId } from "./dom.ts";
import { type EntryField, entryField } from "./entry-field.ts";
import { figureNodes, splitUnit } from "./figure-text.ts";
import { splitMark } from "./marks.ts";
import { SlideField } from "./slide-field.ts";
import { sourceNodes } from "./sources.ts";

/** An entry in a row: its words at the left, its tray in the figures' column. */
export class EntryRow implements CellView {
  readonly element = el("div", { class: "row entry" });
  private readonly id: CellId;
  private readonly context: Context;
  private field: EntryField | undefined;
  private kind = "";
  private readonly refusedId = freshId("refused");
  private readonly hint = el("p", { class: "hint" });
  private readonly refused = el("p", { class: "refused", id: this.refusedId });
  private readonly changed = el("p", { class: "hint back" });
  private readonly second = el("small", { class: "alt" });
  private slide: SlideField | undefined;

  constructor(id: CellId, context: Context) {
    this.id = id;
    this.context = context;
  }

  update(state: CellState | undefined): void {
    const entry = state?.entry;
    if (!entry) return;
    const kind = `${entry.entry} ${entry.options?.length ?? 0} ${entry.slide !== undefined}`;
    if (!this.field || kind !== this.kind) this.build(state);
    this.kind = kind;
    const text = this.context.book.text(this.id, entry.initial);
    this.field?.show(entry, text);
    this.slide?.show(entry, text);
    this.hint.replaceChildren(
      [entry.hint, limitWords(entry.limits)].filter(Boolean).join(" "),
      ...(entry.sources?.length
        ? [" Usual value: ", ...sourceNodes(entry.sources, this.context.sources), "."]
        : []),
    );
    this.hint.hidden = this.hint.textContent === "";
    this.showRefusal(state);
    this.showChange(entry.initial, entry.unit ?? "");
    this.showSecond(state);
  }

  private build({ entry }: CellState): void {
    if (!entry) return;
    const { book } = this.context;
    const name = book.title(this.id);
    const field = entryField(entry, {
      place: "row",
      name,
      entered: (text) => this.context.enter(this.id, text),
    });
    this.field = field;
    // A group of choices carries its name in its legend; the words beside it are for the eye.
    const label = field.control
      ? el("label", { for: field.control.id }, name)
      : el("span", { class: "name", "aria-hidden": "true" }, name);
    this.slide = entry.slide && new SlideField(name, (text) => this.context.enter(this.id, text));
    this.element.replaceChildren(
      el("div", { class: "what" }, label, this.hint, this.changed, this.refused),
      el("div", { class: "val" }, field.element, this.second),
      ...(this.slide ? [this.slide.element] : []),
    );
  }

  private showRefusal(state: CellState): void {
    const own = state.entry?.problem?.sentence;
    const others = this.context.problems.of(this.id).map(({ sentence }) => sentence);
    const all = [...new Set(own === undefined ? others : [own, ...others])];
    this.refused.hidden = all.length === 0;
    this.refused.replaceChildren(
      ...(all.length > 0
        ? [splitMark(), el("span", {}, all.map((said) => withoutName(said, this.id)).join(" "))]
        : []),
    );
    this.field?.refuse(all.length > 0 ? this.refusedId : undefined);
  }

  private showChange(initial: string, unit: string): void {
    const text = this.context.book.entered.get(this.id);
    const changed = typeof text === "string" && text !== initial;
    this.element.classList.toggle("changed", changed);
    if (changed === !this.changed.hidden && this.changed.childNodes.length > 0) return;
    this.changed.hidden = !changed;
    if (!changed) return;
    const bare = /^[\d\s.,/½¼¾-]+$/.test(initial) && unit !== "";
    const was = initial === "" ? "nothing" : `${initial}${bare ? ` ${unit}` : ""}`;
    this.changed.replaceChildren(
      `You changed this; it was ${was}. `,
      button("Put back", () => this.putBack(), {
        class: "lnk",
        "aria-label": `Put back ${this.context.book.title(this.id)}`,
      }),
    );
  }

  private putBack(): void {
    const { control, element } = this.field ?? {};
    this.context.enter(this.id, undefined);
    // The button is about to go; focus stays with what it was about.
    (control ?? element?.querySelector<HTMLElement>("input:checked, input"))?.focus();
  }

  private showSecond({ entry }: CellState): void {
    const { printed } = entry ?? {};
    const words = printed?.second ?? printed?.text;
    this.second.hidden = words === undefined;
    if (words === undefined) return;
    const [number, unit] = splitUnit(words);
    this.second.replaceChildren(el("span", {}, ...figureNodes(number)), el("span", {}, unit));
  }
}

/** "1/16 in to 6 in" and "at most 20" as sentences. */
function limitWords(limits: string | undefined): string {
  if (limits === undefined || limits === "" || limits.startsWith("or ")) return "";
  const words = / to /.test(limits) ? `from ${limits}` : limits;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** The sentence begins with the cell's name, which stands beside it anyhow. */
function withoutName(sentence: string, id: CellId): string {
  const name = `${id.slice(id.indexOf("#") + 1)}: `;
  const rest = sentence.startsWith(name) ? sentence.slice(name.length) : sentence;
  return `${rest.charAt(0).toUpperCase()}${rest.slice(1)}`;
}
