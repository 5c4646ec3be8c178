import type { CellId } from "../types/index.ts";
import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";
import { figureNodes } from "./figure-text.ts";
import { flagMark } from "./marks.ts";
import { mainFigure } from "./moves.ts";
import { onPaper } from "./on-paper.ts";
import { keepAct } from "./plans/acts.ts";

const most = 7;

export interface TallyEvents {
  putBackAll(): void;
  /** Goes to the first caution on the page. */
  toCautions(): void;
  cautions(): number;
}

/** The answers the document pins: a rail when there is room, a strip under the thumb else. */
export class Tally {
  readonly element: HTMLElement;
  private readonly context: Context;
  private readonly events: TallyEvents;
  private readonly box: HTMLDetailsElement;
  private readonly strip = el("span", { class: "strip" });
  private readonly more = el("span", { class: "more" });
  private readonly list = el("dl");
  private readonly standing = el("p", { class: "plan" });
  private readonly cautions = el("p", { class: "cautions" });
  private readonly undo: HTMLButtonElement;
  private readonly redo: HTMLButtonElement;
  private readonly back: HTMLButtonElement;
  /** On paper there is room for all of it, too. */
  private readonly wide = matchMedia("print, (min-width: 960px)");

  constructor(context: Context, events: TallyEvents) {
    this.context = context;
    this.events = events;
    this.undo = button("Undo last change", () => context.undo());
    this.redo = button("Do it again", () => context.redo());
    this.back = button("Put everything back", () => events.putBackAll());
    const { words, run } = keepAct(context);
    const keep = button(words, run);
    const inside = el(
      "div",
      { class: "tl" },
      el("h2", {}, "The tally"),
      this.standing,
      this.list,
      this.cautions,
      el("p", { class: "acts" }, keep, this.undo, this.redo, this.back),
    );
    this.box = el(
      "details",
      { class: "tallybox" },
      el("summary", {}, this.strip, this.more),
      inside,
    );
    this.element = el("aside", { class: "tally", "aria-label": "The tally" }, this.box);
    const openWhenWide = () => {
      this.box.open = this.wide.matches;
    };
    openWhenWide();
    this.wide.addEventListener("change", openWhenWide);
    // Opened before the sheets are counted: the medium changes after, and the last sheet was lost.
    onPaper(this.box, {
      begin: () => {
        this.box.open = true;
      },
      end: openWhenWide,
    });
    this.box.addEventListener("toggle", () => this.showMore());
    this.listenToClose();
  }

  update(): void {
    const ids = this.context.book.pinned().slice(0, most);
    this.element.hidden = ids.length === 0;
    this.list.replaceChildren(...ids.map((id) => this.answer(id)));
    this.strip.replaceChildren(...ids.slice(0, 4).map((id, index) => this.short(id, index)));
    this.showMore();
    this.showStanding();
    this.showCautions();
    const { history } = this.context.driver;
    this.undo.disabled = history.empty;
    this.redo.hidden = history.nothingUndone;
  }

  private answer(id: CellId): HTMLElement {
    const { book, driver } = this.context;
    const state = book.states.get(id);
    const figure = mainFigure(state?.shown);
    const was = driver.moves.was(id);
    const busy = book.working.has(id);
    const value = el("dd");
    if (figure) {
      value.append(el("span", { class: "n" }, ...figureNodes(figure.number)));
      if (figure.unit !== "") value.append(" ", el("span", { class: "unit" }, figure.unit));
      if (figure.second) value.append(el("small", {}, ...figureNodes(figure.second)));
      if (was)
        value.append(el("small", { class: "was" }, "was ", el("s", {}, ...figureNodes(was.text))));
    } else value.append(el("span", { class: "none" }, standIn(state?.error !== undefined, busy)));
    const classes = [was ? "moved" : "", busy ? "busy" : ""].join(" ").trim();
    return el(
      "div",
      { class: classes || undefined, "data-cell": id },
      el("dt", {}, book.title(id)),
      value,
    );
  }

  private short(id: CellId, index: number): HTMLElement {
    const { book } = this.context;
    const state = book.states.get(id);
    const figure = mainFigure(state?.shown);
    return el(
      "span",
      { class: index === 3 ? "x4" : undefined },
      el("small", {}, book.title(id)),
      el("b", {}, ...figureNodes(figure?.number ?? (state?.error ? "not known" : "…"))),
      figure?.unit ? el("span", { class: "unit" }, ` ${figure.unit}`) : undefined,
    );
  }

  private showMore(): void {
    const { length } = this.context.book.pinned().slice(0, most);
    this.more.textContent = this.box.open ? "Close" : `All ${length}`;
  }

  private showStanding(): void {
    const { book } = this.context;
    const changed = book.entered.size;
    const words =
      changed === 0
        ? "As the notebook has it"
        : changed === 1
          ? "One thing changed by you"
          : `${changed} things changed by you`;
    // Said once: the same rows are missing from all of them.
    const left = new Set(book.pinned().flatMap((id) => book.states.get(id)?.leftOut ?? []));
    const all = [words, ...left].join("; ");
    if (this.standing.textContent !== all) this.standing.textContent = all;
    this.back.hidden = changed === 0;
  }

  private showCautions(): void {
    const count = this.events.cautions();
    this.cautions.hidden = count === 0;
    const words = count === 1 ? "1 caution" : `${count} cautions`;
    if (this.cautions.textContent !== words)
      this.cautions.replaceChildren(
        flagMark(),
        button(words, () => this.events.toCautions(), { class: "lnk" }),
      );
  }

  /** The strip, opened upward, closes by its word, by Escape and by a swipe down. */
  private listenToClose(): void {
    const close = () => {
      if (!this.wide.matches) this.box.open = false;
    };
    this.element.addEventListener("keydown", ({ key }) => {
      if (key !== "Escape" || this.wide.matches || !this.box.open) return;
      close();
      this.box.querySelector("summary")?.focus();
    });
    let from: number | undefined;
    this.box.addEventListener(
      "touchstart",
      ({ touches }) => {
        from = touches[0]?.clientY;
      },
      { passive: true },
    );
    this.box.addEventListener(
      "touchend",
      ({ changedTouches }) => {
        const to = changedTouches[0]?.clientY;
        const inside = this.box.querySelector(".tl");
        if (from !== undefined && to !== undefined && to - from > 60 && inside?.scrollTop === 0)
          close();
      },
      { passive: true },
    );
  }
}

function standIn(broken: boolean, busy: boolean): string {
  if (busy) return "being worked out";
  return broken ? "not known" : "…";
}
