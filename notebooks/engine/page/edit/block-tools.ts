import type { Block, Notebook } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { button, el } from "../dom.ts";
import { addHere } from "./add-here.ts";
import { isBlank } from "./block-place.ts";
import { focusTools } from "./tools-focus.ts";
import type { WordsSlip } from "./words-slip.ts";

/** What stands after each block in the writing view: what can be changed there, and added. */
export class BlockTools {
  readonly #context: Context;
  readonly #made: { element: HTMLElement; change: HTMLButtonElement; holder: HTMLElement }[] = [];
  #slip: WordsSlip | undefined;
  #seen: Notebook | undefined;

  constructor(context: Context) {
    this.#context = context;
  }

  /** The tools after a block; the same element as long as a block stands at that place. */
  at(index: number, block: Block): HTMLElement | undefined {
    const { book, editing } = this.#context;
    if (!editing.mayEdit(book.main.file)) return index === 0 ? this.#notYours() : undefined;
    this.#followSlip();
    // Between two cells stands a blank line: what can be added there is said once.
    const last = this.#lastOfSlip();
    if (isBlank(block) && index > 0 && index !== last) return undefined;
    const tools = this.#made[index] ?? this.#make(index);
    this.#made[index] = tools;
    const slip = this.#slip;
    const words = block.kind === "uses" ? "Change what is used" : "Change these words";
    const mayChange = block.kind === "uses" || (block.kind === "prose" && !isBlank(block));
    if (tools.change.textContent !== words) tools.change.textContent = words;
    tools.change.hidden = !mayChange || index === last;
    if (slip && index === last && slip.element.parentNode !== tools.holder)
      tools.holder.append(slip.element);
    return tools.element;
  }

  #lastOfSlip(): number | undefined {
    return this.#slip && this.#slip.place.index + Math.max(1, this.#slip.place.span) - 1;
  }

  /** The document is another since the last look: the opened words go along, or are gone. */
  #followSlip(): void {
    const { main } = this.#context.book;
    if (main === this.#seen) return;
    this.#seen = main;
    if (this.#slip && !this.#slip.update()) this.#end();
  }

  #make(index: number) {
    const holder = el("div", { class: "words-holder" });
    const open = (at: number) =>
      this.#open(at).catch(() =>
        this.#context.say("The editor could not be fetched. Try again when you are online."),
      );
    const change = button("Change these words", () => void open(index), { class: "lnk" });
    const element = el(
      "div",
      { class: "blocktools", "data-index": index },
      change,
      holder,
      addHere(
        this.#context,
        () => index,
        (at) => void open(at),
      ),
    );
    return { element, change, holder };
  }

  async #open(index: number): Promise<void> {
    const { WordsSlip: Made } = await import("./words-slip.ts");
    this.#end();
    this.#seen = this.#context.book.main;
    const slip = new Made(index, this.#context, () => {
      const at = this.#lastOfSlip() ?? index;
      this.#end();
      const tools = this.#made[at];
      if (tools) tools.change.hidden = false;
      if (tools && !tools.change.hidden) tools.change.focus();
      else focusTools(at);
    });
    this.#slip = slip;
    const tools = this.#made[index];
    tools?.holder.append(slip.element);
    if (tools) tools.change.hidden = true;
    slip.focus();
  }

  #end(): void {
    this.#slip?.end();
    this.#slip = undefined;
  }

  #notYours(): HTMLElement {
    const { makeItMine } = this.#context;
    return el(
      "p",
      { class: "blocktools not-yours" },
      "This notebook comes with the workbook. To change its words and formulas, ",
      button("make it mine", () => makeItMine(), { class: "lnk" }),
      ": a copy that is yours.",
    );
  }
}
