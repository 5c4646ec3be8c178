import { withBlockMoved, withBlockRemoved } from "../../document/seldom.ts";
import type { Notebook } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { button, el } from "../dom.ts";
import { placeBeside } from "./block-place.ts";
import { figureCompletion } from "./completion.ts";
import { Field } from "./field.ts";
import { keysInWords } from "./field-keys.ts";
import { bodyOf, StretchPlace } from "./stretch-place.ts";
import { focusTools } from "./tools-focus.ts";
import { vocabularyOf } from "./vocabulary.ts";

/** Words of the document, opened to be written; how they are drawn stands above, and follows. */
export class WordsSlip {
  readonly element: HTMLElement;
  readonly place: StretchPlace;
  readonly #context: Context;
  readonly #field: Field;
  readonly #lines = el("span", { class: "hints" });
  readonly #closed: () => void;
  readonly #before: string;
  #isOwn = false;

  constructor(index: number, context: Context, closed: () => void) {
    const { main } = context.book;
    this.#context = context;
    this.#closed = closed;
    this.place = new StretchPlace(main, index);
    const [, body] = bodyOf(this.place.textIn(main));
    this.#before = body;
    const isUses = main.blocks[index]?.kind === "uses";
    const label = isUses ? "What is used" : "These words";
    this.#field = new Field({
      label,
      text: body.replaceAll("\r\n", "\n"),
      firstLine: this.#firstLine(main),
      isProse: !isUses,
      extensions: isUses ? [] : [figureCompletion(() => vocabularyOf(context, main.file, []))],
      typed: (text) => this.#write(text),
      keep: () => this.#close("Kept."),
      putBack: () => this.#putBack(),
      undo: () => context.undo(),
      redo: () => context.redo(),
    });
    const hint = isUses
      ? "The file in the first line, then one name to a line."
      : "A figure stands in a sentence as `fig` and its cell’s name between backticks. A line that begins with # is a heading, one with - a point of a list.";
    this.element = el(
      "div",
      { class: "slip own-slip words-slip", role: "group", "aria-label": label },
      el("div", { class: "sliphead" }, el("span", { class: "cname" }, label), this.#lines),
      el(
        "div",
        { class: "writing" },
        el("div", { class: "pad-tray" }, this.#field.element),
        el("p", { class: "hint keys" }, `${hint} ${keysInWords}`),
      ),
      el(
        "div",
        { class: "slipfoot" },
        this.#acts(),
        el(
          "div",
          { class: "acts" },
          button("Keep", () => this.#close("Kept."), { class: "main" }),
          button("Put back", () => this.#putBack()),
        ),
      ),
    );
    this.#showLines();
  }

  /** The document has changed; gives false where the words are gone. */
  update(): boolean {
    const { main } = this.#context.book;
    if (this.#isOwn) this.place.written(main);
    else if (!this.place.follow(main)) return false;
    const [, body] = bodyOf(this.place.textIn(main));
    if (!this.#isOwn) this.#field.follow(body.replaceAll("\r\n", "\n"), this.#firstLine(main));
    this.#showLines();
    return true;
  }

  focus(): void {
    this.#field.focus();
  }

  end(): void {
    this.#field.remove();
    this.element.remove();
  }

  #acts(): HTMLElement {
    return el(
      "p",
      { class: "slipacts" },
      button("Move up", () => this.#move(-1), { class: "lnk" }),
      button("Move down", () => this.#move(1), { class: "lnk" }),
      button("Take out", () => this.#takeOut(), { class: "lnk" }),
    );
  }

  #move(by: -1 | 1): void {
    const { main } = this.#context.book;
    const { index } = this.place;
    const to = placeBeside(main, index, by);
    if (to === undefined) {
      this.#context.say(
        by < 0 ? "They stand at the top already." : "They stand at the end already.",
      );
      return;
    }
    this.#context.editing.edit(new Map([[main.file, withBlockMoved(main, index, to)]]));
    this.#context.say(by < 0 ? "Moved up." : "Moved down.");
  }

  #takeOut(): void {
    const { main } = this.#context.book;
    const { index } = this.place;
    this.#closed();
    this.#context.editing.edit(new Map([[main.file, withBlockRemoved(main, index)]]));
    this.#context.say("The words are taken out. Undo brings them back.");
    focusTools(index - 1);
  }

  #firstLine({ blocks }: Notebook): number {
    const [before] = bodyOf(this.place.textIn({ blocks } as Notebook));
    return (blocks[this.place.index]?.line ?? 1) + before.split("\n").length - 1;
  }

  #showLines(): void {
    const { main } = this.#context.book;
    const first = this.#firstLine(main);
    const [, body] = bodyOf(this.place.textIn(main));
    this.#lines.textContent = `lines ${first} to ${first + body.split("\n").length - 1}`;
  }

  #write(body: string): void {
    const { main } = this.#context.book;
    const [before, , after] = bodyOf(this.place.textIn(main));
    const text = this.place.replaced(main, `${before}${body}${after === "" ? "\n" : after}`);
    this.#isOwn = true;
    try {
      this.#context.editing.edit(new Map([[main.file, text]]), { goesOn: "words" });
    } finally {
      this.#isOwn = false;
    }
  }

  #putBack(): void {
    if (this.#field.text !== this.#before) this.#write(this.#before);
    this.#close("The words are as they were before.");
  }

  #close(words: string): void {
    this.#closed();
    this.#context.say(words);
  }
}
