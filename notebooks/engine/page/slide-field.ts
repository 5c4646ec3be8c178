import type { ShownEntry } from "../types/index.ts";
import { el, setAttribute } from "./dom.ts";

/**
 * The slide beside an entry's field: moving it writes its number into the field as if typed, so that
 * the text stays all there is to keep. A text that is refused leaves it where it stood.
 */
export class SlideField {
  readonly element: HTMLInputElement;

  constructor(name: string, entered: (text: string) => void) {
    this.element = el("input", { type: "range", class: "slide", "aria-label": `${name}, slide` });
    this.element.addEventListener("input", () => entered(this.element.value));
  }

  /** `text` is what is entered now: while it is being moved its own place is the newest. */
  show({ slide, unit }: ShownEntry, text: string): void {
    this.element.hidden = slide === undefined;
    if (slide === undefined) return;
    const { from, to, step, at } = slide;
    for (const [key, value] of Object.entries({ min: from, max: to, step }))
      setAttribute(this.element, key, value);
    if (at !== undefined && this.element.value !== text.trim()) this.element.value = String(at);
    // Of a text that is refused the place stays, and what is said of it.
    if (at !== undefined)
      setAttribute(this.element, "aria-valuetext", unit ? `${at} ${unit}` : String(at));
  }
}
