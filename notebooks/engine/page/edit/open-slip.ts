import type { CellId } from "../../types/index.ts";
import { partsOf } from "../book.ts";
import type { Context } from "../context.ts";
import { button, el } from "../dom.ts";
import { slipView } from "../slip.ts";

/** An opened cell. */
export interface OpenSlip {
  readonly element: HTMLElement;
  update(): void;
  focus(): void;
  end(): void;
}

/** Opens a cell: to be changed where the document is the reader's own, else to be looked at. */
export async function openSlip(id: CellId, context: Context, close: () => void): Promise<OpenSlip> {
  const [file] = partsOf(id);
  if (!context.editing.mayEdit(file)) return shownSlip(id, context);
  const { CellSlip } = await import("./cell-slip.ts");
  return new CellSlip(id, context, close);
}

function shownSlip(id: CellId, context: Context): OpenSlip {
  const { book } = context;
  const [file] = partsOf(id);
  const isMain = file === book.main.file;
  const inside = el("div");
  const act = isMain
    ? button("Make it mine to change this", () => context.makeItMine())
    : el(
        "a",
        { href: `?notebook=${encodeURIComponent(file)}` },
        `It stands in ${book.documents.get(file)?.title ?? file}: open that notebook`,
      );
  const element = el("div", {}, inside, el("p", { class: "acts" }, act));
  let shown: unknown;
  const update = () => {
    const outline = book.outline.get(id);
    if (!outline || outline === shown) return;
    shown = outline;
    inside.replaceChildren(slipView(outline, context));
  };
  update();
  return { element, update, focus: () => act.focus(), end: () => element.remove() };
}
