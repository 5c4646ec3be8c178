import type { CellId, CellState, Figure, OutlineCell } from "../types/index.ts";
import type { CellView, Context } from "./context.ts";
import { el } from "./dom.ts";
import { figureNodes, splitUnit } from "./figure-text.ts";
import { figureOfText } from "./moves.ts";
import { WorkingView } from "./working.ts";

/** A result: its name at the left, its figure at the right, its working folded under the name. */
export class ResultRow implements CellView {
  readonly element = el("div", { class: "row" });
  private readonly id: CellId;
  private readonly context: Context;
  private readonly value = el("div", { class: "val" });
  private readonly working: WorkingView;
  private readonly left = el("p", { class: "hint" });

  constructor(id: CellId, context: Context) {
    this.id = id;
    this.context = context;
    this.working = new WorkingView(id, context);
    const name = el("span", { class: "name" }, context.book.title(id));
    this.element.append(
      el("div", { class: "what" }, name, this.left, this.working.element),
      this.value,
    );
  }

  update(state: CellState | undefined, outline: OutlineCell | undefined): void {
    const shown = state?.shown;
    const was = this.context.driver.moves.was(this.id);
    this.element.classList.toggle("moved", was !== undefined);
    if (shown?.kind === "figure") this.value.replaceChildren(...figureParts(shown.figure, was));
    else if (shown?.kind === "text") {
      const figure = figureOfText(shown.text);
      const kind = figure.unit === "" ? "words" : "";
      this.value.replaceChildren(...figureParts(figure, was, kind));
    }
    this.left.textContent = state?.leftOut ?? "";
    this.left.hidden = state?.leftOut === undefined;
    this.working.update(state, outline);
  }
}

/** A figure in the figures' column: digits, unit, the same in the other system, what it was. */
export function figureParts(figure: Figure, was?: Figure, kind = ""): HTMLElement[] {
  const { number, unit, second } = figure;
  const long = kind === "" && number.length > 9 ? "long" : kind;
  const parts = [
    el("span", { class: `n ${long}`.trim() }, el("span", {}, ...figureNodes(number))),
    el("span", { class: "unit" }, unit),
  ];
  if (second) {
    const [digits, other] = splitUnit(second);
    parts.push(
      el("small", { class: "alt" }, el("span", {}, ...figureNodes(digits)), el("span", {}, other)),
    );
  }
  if (was) parts.push(wasPart(was));
  return parts;
}

function wasPart({ number }: Figure): HTMLElement {
  return el(
    "small",
    { class: "was" },
    el("span", {}, "was ", el("s", {}, ...figureNodes(number))),
    el("span"),
  );
}
