import type { CellId } from "../types/index.ts";
import { partsOf } from "./book.ts";
import { slotId } from "./cell-slot.ts";

/**
 * Goes to where a cell stands on the page, opening what it is folded in. A cell of a used notebook
 * that is not on this page is gone to in its own; gives false where there is neither.
 */
export function goTo(id: CellId, page: HTMLElement): boolean {
  const fold = page.querySelector<HTMLDetailsElement>(`details[data-cell="${CSS.escape(id)}"]`);
  if (fold) {
    fold.open = true;
    show(fold);
    return true;
  }
  const slot = document.getElementById(slotId(id));
  if (slot) {
    // A quiet cell is drawn once somebody asks for it.
    slot.classList.add("asked");
    show(slot);
    return true;
  }
  location.href = `?notebook=${encodeURIComponent(partsOf(id)[0])}#${slotId(id)}`;
  return false;
}

/** Goes to the first thing of a kind that is drawn. */
export function find(selector: string, page: HTMLElement): void {
  const found = [...page.querySelectorAll<HTMLElement>(selector)].find(
    (one) => one.offsetParent !== null,
  );
  if (!found) return;
  found.tabIndex = -1;
  show(found);
}

function show(element: HTMLElement): void {
  const inner = element.querySelector<HTMLDetailsElement>(":scope > details.fold");
  if (inner) inner.open = true;
  for (let at = element.parentElement; at; at = at.parentElement)
    if (at instanceof HTMLDetailsElement) at.open = true;
  element.scrollIntoView({ block: "center" });
  const control = element.querySelector<HTMLElement>("input, select, summary");
  (control ?? element).focus({ preventScroll: true });
}
