import type { CellId } from "../../types/index.ts";
import { slotId } from "../cell-slot.ts";

/** Opens the slip of a cell that stands on the page, and brings it into view. */
export function openCell(id: CellId): void {
  const slot = document.getElementById(slotId(id));
  const name = slot?.querySelector<HTMLElement>(":scope > .cellname");
  if (!slot || !name) return;
  for (let at = slot.parentElement; at; at = at.parentElement)
    if (at instanceof HTMLDetailsElement) at.open = true;
  slot.scrollIntoView({ block: "nearest" });
  if (name.getAttribute("aria-expanded") !== "true") name.click();
}
