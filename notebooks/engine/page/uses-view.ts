import type { CellId, UsesBlock } from "../types/index.ts";
import { CellSlot } from "./cell-slot.ts";
import type { Context } from "./context.ts";
import { el } from "./dom.ts";

/** What a notebook takes from another, folded: its tables and entries can be changed in place. */
export interface UsesView {
  readonly element: HTMLElement;
  readonly slots: ReadonlyMap<CellId, CellSlot>;
}

export function usesView(
  block: UsesBlock,
  context: Context,
  opened: (id: CellId, slot: CellSlot) => void,
): UsesView {
  const { book } = context;
  const slots = new Map<CellId, CellSlot>();
  const from = book.documents.get(block.file)?.title ?? block.file;
  const folds = block.names.flatMap(({ name }) => {
    const id = book.find(name, block.file);
    if (id === undefined) return [];
    const holder = el("div");
    const count = el("span", { class: "u" }, rowsOf(id, context));
    const fold = el(
      "details",
      { class: "fold", "data-cell": id },
      el("summary", {}, el("b", {}, book.title(id)), " ", count),
      holder,
    );
    // Made when it is first opened: most readers look at one of them, if any.
    fold.addEventListener("toggle", () => {
      if (!fold.open || slots.has(id)) return;
      const slot = new CellSlot(id, context);
      slots.set(id, slot);
      holder.append(slot.element);
      opened(id, slot);
    });
    return [fold];
  });
  const link = `?notebook=${encodeURIComponent(block.file)}`;
  const element = el(
    "div",
    { class: "wide uses" },
    el(
      "p",
      { class: "over" },
      "From ",
      el("a", { href: link }, from),
      ". All notebooks that use it share it.",
    ),
    ...folds,
  );
  return { element, slots };
}

function rowsOf(id: CellId, { book }: Context): string {
  if (!book.isTable(id)) return "";
  const { length } = book.table(id).rows;
  return length === 1 ? "1 row" : `${length.toLocaleString("en")} rows`;
}
