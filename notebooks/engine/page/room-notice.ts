import type { CellId } from "../types/index.ts";
import { button, el } from "./dom.ts";
import type { RoomEnd } from "./driver.ts";
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
      `${this.named({ cell })} is still at work and gives no sign.`,
      "What you entered is kept as it is.",
      button("Stop it", () => this.events.stop(), { class: "main" }),
    );
  }

  ended(end: RoomEnd): void {
    if (end.over)
      this.show(
        end.why === "broke" ? "Nothing can be worked out any more." : factOf(end, this.named(end)),
        end.message ?? "It was started again once and ended again, so it now waits for you.",
        button("Start it again", () => this.events.startAgain(), { class: "main" }),
      );
    else if (end.why === "stopped") this.hide();
    else
      this.show(
        factOf(end, this.named(end)),
        "The rest was started again with what you entered.",
        button("Close", () => this.hide()),
      );
  }

  hide(): void {
    this.element.hidden = true;
    this.element.replaceChildren();
  }

  private named({ cell }: Pick<RoomEnd, "cell">): string {
    return cell === undefined ? "The notebook" : this.events.title(cell);
  }

  private show(fact: string, more: string, act: HTMLElement): void {
    this.element.replaceChildren(splitMark(), el("p", {}, el("b", {}, fact), ` ${more}`), act);
    this.element.hidden = false;
  }
}

function factOf({ why }: RoomEnd, named: string): string {
  if (why === "stopped") return `${named} was stopped.`;
  if (why === "no sign") return `${named} gave no sign for 15 seconds and was ended.`;
  return `${named} was ended by the browser: it may have taken more memory than there is.`;
}
