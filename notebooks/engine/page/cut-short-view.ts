import type { CellId, CellState } from "../types/index.ts";
import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";

/** Says that a cell's long work was stopped and its best so far stands, and starts it again. */
export class CutShortView {
  readonly element = el("p", { class: "cut-short", hidden: true });
  private readonly context: Context;

  constructor(id: CellId, context: Context) {
    this.context = context;
    const again = button("Start it again", () => this.context.driver.workAgain(id), {
      class: "lnk",
    });
    this.element.append("Stopped before its end: this is the best found by then. ", again);
  }

  show(state: CellState | undefined): void {
    const hidden = state?.cutShort !== true || state.error !== undefined;
    if (!hidden && this.element.hidden) this.context.say("Stopped. The best found by then stands.");
    this.element.hidden = hidden;
  }
}
