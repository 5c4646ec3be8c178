import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";

/**
 * Long work under way: after 0.3 s a line says so, after 1 s the board that is being sawn towards
 * its bound. Without a fraction there are only words.
 */
export class ProgressView {
  readonly element = el("div", { class: "sawing", hidden: true });
  private readonly words = el("p");
  private readonly done = el("span", { class: "done" });
  private readonly blade = el("span", { class: "blade" });
  private readonly bar = el("div", { class: "gap", "aria-hidden": "true" }, this.done, this.blade);
  private began: number | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private latest: { words: string; fraction: number | undefined } = {
    words: "",
    fraction: undefined,
  };

  constructor(context: Context) {
    const stop = button("Stop this", () => context.driver.stopLongWork());
    this.element.append(this.words, this.bar, el("div", { class: "gaplab" }, el("span"), stop));
  }

  show(words: string, fraction: number | undefined): void {
    this.latest = { words, fraction };
    this.began ??= performance.now();
    if (performance.now() - this.began >= 300) this.draw();
    else this.timer ??= setTimeout(() => this.draw(), 300);
  }

  hide(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.began = undefined;
    this.element.hidden = true;
  }

  private draw(): void {
    if (this.began === undefined) return;
    const { words, fraction } = this.latest;
    const passed = performance.now() - this.began;
    const seconds = Math.floor(passed / 1000);
    this.words.textContent = seconds > 0 ? `${words} (${seconds} s)` : words;
    this.bar.hidden = fraction === undefined || passed < 1_000;
    const at = Math.max(0, Math.min(1, fraction ?? 0)) * 100;
    this.done.style.setProperty("right", `${100 - at}%`);
    this.blade.style.setProperty("right", `${100 - at}%`);
    this.element.hidden = false;
  }
}
