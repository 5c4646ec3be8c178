import type { CellId } from "../types/index.ts";
import { button, el } from "./dom.ts";
import { splitMark } from "./marks.ts";

export interface NoticeEvents {
  stop(): void;
  startAgain(): void;
  title(id: CellId): string;
}

/** Says that the closed room gives no sign, or was ended, and what can be done. */
export class RoomNotice {
  readonly element = el("div", { class: "roomnotice", role: "alert", hidden: true });
  private readonly events: NoticeEvents;

  constructor(events: NoticeEvents) {
    this.events = events;
  }

  silent(cell: CellId | undefined): void {
    this.show(
      `${this.named(cell)} is still at work and gives no sign.`,
      "What you entered is kept as it is.",
      button("Stop it", () => this.events.stop(), { class: "main" }),
    );
  }

  ended(why: "stopped" | "no sign" | "broke", cell: CellId | undefined, message: string): void {
    if (why === "broke") {
      const again = button("Start again", () => this.events.startAgain(), { class: "main" });
      this.show("Nothing can be worked out any more.", message, again);
    } else if (why === "no sign")
      this.show(
        `${this.named(cell)} gave no sign for 15 seconds and was ended.`,
        "The rest was started again with what you entered.",
        button("Close", () => this.hide()),
      );
    else this.hide();
  }

  hide(): void {
    this.element.hidden = true;
    this.element.replaceChildren();
  }

  private named(cell: CellId | undefined): string {
    return cell === undefined ? "The notebook" : this.events.title(cell);
  }

  private show(fact: string, more: string, act: HTMLElement): void {
    this.element.replaceChildren(splitMark(), el("p", {}, el("b", {}, fact), ` ${more}`), act);
    this.element.hidden = false;
  }
}
