import type { CellId, OutlineCell } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { el } from "../dom.ts";
import { linksTo } from "../links.ts";
import { lookUps } from "../slip.ts";
import { printedValue } from "./suggestions.ts";

/** What a cell takes and gives to, with the live values beside them. */
export class SlipNames {
  readonly element = el("dl", { class: "names" });
  readonly #context: Context;
  #shown = "";

  constructor(context: Context) {
    this.#context = context;
  }

  show(outline: OutlineCell | undefined): void {
    const { takes = [], gives = [] } = outline ?? {};
    const names = outline?.functions.map(({ name }) => name);
    const values = [takes, gives].map((ids) => ids.map((id) => [id, this.#value(id)]));
    const key = JSON.stringify([values, names]);
    if (key === this.#shown) return;
    this.#shown = key;
    this.element.replaceChildren(
      ...this.#part("Takes", takes, "nothing from other cells"),
      ...this.#part("Gives to", gives, "no other cell"),
      ...(outline ? lookUps(outline, this.#context) : []).map(({ term, inside }) =>
        el("div", {}, el("dt", {}, term), el("dd", {}, ...inside)),
      ),
    );
  }

  #part(words: string, ids: readonly CellId[], none: string): HTMLElement[] {
    const nodes = ids.length > 0 ? linksTo(ids, this.#context) : [none];
    return [el("div", {}, el("dt", {}, words), el("dd", {}, ...nodes))];
  }

  #value(id: CellId): unknown {
    const { book } = this.#context;
    const { entry, shown } = book.states.get(id) ?? {};
    return [book.title(id), entry?.text, printedValue(shown)];
  }
}
