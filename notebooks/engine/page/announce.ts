import { el } from "./dom.ts";

/**
 * Says what changed to whoever listens instead of looking: politely, once things have come to rest,
 * and never the same words twice running.
 */
export class Announcer {
  readonly element = el("p", { class: "vh", role: "status", "aria-live": "polite" });
  private timer: ReturnType<typeof setTimeout> | undefined;

  /** Says these words after a moment; later words in that moment take their place. */
  say(words: string, delay = 0): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      if (this.element.textContent !== words) this.element.textContent = words;
    }, delay);
  }
}
