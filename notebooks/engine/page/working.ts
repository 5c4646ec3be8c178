import type { CellId, CellState, OutlineCell } from "../types/index.ts";
import type { Context } from "./context.ts";
import { dependsOf } from "./depends/acts.ts";
import { button, el } from "./dom.ts";
import { figureNodes } from "./figure-text.ts";
import { linksTo } from "./links.ts";
import { originsOf } from "./origins.ts";
import { functionLink } from "./reference/link.ts";
import { slipView } from "./slip.ts";
import { sourceNodes } from "./sources.ts";

/**
 * Where a figure comes from, folded under it: the sum with this garden's numbers, what it takes,
 * the rule, the source; and, asked for, the formula. It is made only when it is opened.
 */
export class WorkingView {
  readonly element = el("details", { class: "working" });
  private readonly id: CellId;
  private readonly context: Context;
  private readonly inside = el("div");
  private slipOpen = false;

  constructor(id: CellId, context: Context) {
    this.id = id;
    this.context = context;
    const title = context.book.title(id);
    const summary = el("summary", {}, "Working", el("span", { class: "vh" }, ` of ${title}`));
    this.element.append(summary, this.inside);
    this.element.addEventListener("toggle", () => this.draw());
  }

  update(_state: CellState | undefined, outline: OutlineCell | undefined): void {
    this.element.hidden = outline === undefined;
    if (this.element.open) this.draw();
  }

  private draw(): void {
    const { book } = this.context;
    const state = book.states.get(this.id);
    const outline = book.outline.get(this.id);
    if (!outline || !this.element.open) return;
    this.inside.replaceChildren(
      ...workingNodes(outline, state, this.context),
      this.formula(outline),
    );
  }

  private formula(outline: OutlineCell): HTMLElement {
    const holder = el("div");
    const toggle = button(this.slipOpen ? "Fold the formula away" : "Show the formula", () => {
      this.slipOpen = !this.slipOpen;
      this.draw();
      this.inside.querySelector<HTMLElement>("button.formula")?.focus();
    });
    toggle.className = "lnk formula";
    toggle.setAttribute("aria-expanded", String(this.slipOpen));
    const feeds = button("What feeds this", () => dependsOf(this.context, this.id), {
      class: "lnk feeds",
    });
    holder.append(el("p", { class: "formula" }, toggle, " · ", feeds));
    if (this.slipOpen) holder.append(slipView(outline, this.context));
    return holder;
  }
}

/** The sum, what is taken, the rule and the source, in this order. */
export function workingNodes(
  outline: OutlineCell,
  state: CellState | undefined,
  context: Context,
): HTMLElement[] {
  const nodes: HTMLElement[] = [];
  if (state?.sum) nodes.push(el("p", { class: "sum" }, ...figureNodes(state.sum)));
  const parts: [string, (Node | string)[]][] = [];
  const { takes, functions } = originsOf(outline, context.book.outline);
  if (takes.length > 0) parts.push(["Takes", linksTo(takes, context)]);
  const rules = functions.flatMap(({ name, rule }) =>
    rule ? [el("div", {}, rule, " ", functionLink(name, context))] : [],
  );
  if (rules.length > 0) parts.push(["Rule", rules]);
  const sources = functions.flatMap(({ sources }) => sources);
  if (sources.length > 0)
    parts.push(["Source", [el("div", {}, ...sourceNodes(sources, context.sources))]]);
  if (parts.length > 0)
    nodes.push(
      el(
        "dl",
        {},
        ...parts.map(([term, inside]) =>
          el("div", {}, el("dt", {}, term), el("dd", {}, ...inside)),
        ),
      ),
    );
  return nodes;
}
