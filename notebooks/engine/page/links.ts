import type { CellId, Shown } from "../types/index.ts";
import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";
import { figureNodes } from "./figure-text.ts";
import { mainFigure } from "./moves.ts";

/** Links to cells with their figures; a cell that is not drawn on this page is only named. */
export function linksTo(ids: readonly CellId[], context: Context): (Node | string)[] {
  // A few stand under each other; many run on, so that the rule below stays in sight.
  const isMany = ids.length > 6;
  const nodes = ids.map((id) => {
    const { book } = context;
    const state = book.states.get(id);
    const figure = state?.entry
      ? (state.entry.complete ?? state.entry.text)
      : ownFigure(state?.shown);
    const link = button(book.title(id), () => context.goTo(id), { class: "lnk" });
    return el(isMany ? "span" : "div", {}, link, ...(figure ? [" ", ...figureNodes(figure)] : []));
  });
  return isMany ? nodes.flatMap((node, at) => (at === 0 ? [node] : ["; ", node])) : nodes;
}

/** The figure of a value that is one; a part of a record would pass for the whole. */
function ownFigure(shown: Shown | undefined): string | undefined {
  return shown?.kind === "record" ? undefined : mainFigure(shown)?.text;
}
