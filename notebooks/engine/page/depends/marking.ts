import type { CellId } from "../../types/index.ts";
import { slotId } from "../cell-slot.ts";
import type { Context } from "../context.ts";
import { countsInWords } from "./words.ts";

/**
 * In the writing view, looking at a cell marks the cells that feed it and those it feeds, in words
 * beside each; what has focus says how many there are.
 */
export function markDepends(context: Context, page: HTMLElement, root: HTMLElement): void {
  let marked: HTMLElement[] = [];
  let shown: CellId | undefined;
  const isWriting = () => root.dataset.view === "write";
  const mark = (id: CellId | undefined) => {
    if (id === shown) return;
    shown = id;
    for (const element of marked) {
      delete element.dataset.feeds;
      element.classList.remove("looked-at");
    }
    marked = [];
    const cell = id === undefined ? undefined : context.book.outline.get(id);
    if (!cell) return;
    const put = (other: CellId, words: string) => {
      const slot = document.getElementById(slotId(other));
      if (!slot || !page.contains(slot)) return;
      slot.dataset.feeds = words;
      marked.push(slot);
    };
    const title = context.book.title(cell.id);
    for (const one of cell.takes) put(one, `feeds ${title}`);
    for (const one of cell.gives) put(one, `takes ${title}`);
    const own = document.getElementById(slotId(cell.id));
    own?.classList.add("looked-at");
    if (own) marked.push(own);
  };
  const at = (target: EventTarget | null): CellId | undefined => {
    const slot = target instanceof Element ? target.closest(".cell") : null;
    if (!slot || !isWriting()) return undefined;
    for (const { id } of context.book.outline.values()) if (slotId(id) === slot.id) return id;
    return undefined;
  };
  mark(at(document.activeElement));
  page.addEventListener("pointerover", (event) => {
    if (event.pointerType === "mouse") mark(at(event.target) ?? at(document.activeElement));
  });
  page.addEventListener("pointerleave", () => mark(at(document.activeElement)));
  page.addEventListener("focusout", () => mark(undefined));
  page.addEventListener("focusin", ({ target }) => {
    const id = at(target);
    mark(id);
    const cell = id === undefined ? undefined : context.book.outline.get(id);
    // A cell's own name says it; in its field it would only be chatter.
    if (cell && target instanceof Element && target.matches(".cellname"))
      context.say(`${context.book.title(cell.id)}: ${countsInWords(cell).toLowerCase()}`);
  });
}
