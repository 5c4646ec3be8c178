import type { CellId, Shown } from "../types/index.ts";
import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";
import { figureNodes } from "./figure-text.ts";
import { mainFigure } from "./moves.ts";

/** Links to cells with their figures; a cell that is not drawn on this page is only named. */
export function linksTo(ids: readonly CellId[], context: Context): Node[] {
  return ids.map((id) => {
    const { book } = context;
    const state = book.states.get(id);
    const figure = state?.entry
      ? `${state.entry.text} ${state.entry.printed ? "" : (state.entry.unit ?? "")}`.trim()
      : ownFigure(state?.shown);
    const link = button(book.title(id), () => context.goTo(id), { class: "lnk" });
    return el("div", {}, link, ...(figure ? [" ", ...figureNodes(figure)] : []));
  });
}

/** The figure of a value that is one; a part of a record would pass for the whole. */
function ownFigure(shown: Shown | undefined): string | undefined {
  return shown?.kind === "record" ? undefined : mainFigure(shown)?.text;
}
