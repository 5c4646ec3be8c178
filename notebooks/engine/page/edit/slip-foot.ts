import type { CellState } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { el } from "../dom.ts";
import { figureNodes } from "../figure-text.ts";
import { mainFigure } from "../moves.ts";
import { printedValue } from "./suggestions.ts";

/** Typing has to rest this long, in milliseconds, before an error is said to who listens. */
const rest = 1_500;

/** The live value of the cell that is written, or what is wrong with it, in words. */
export class SlipFoot {
  readonly element = el("div", { class: "now" });
  readonly #context: Context;
  readonly #title: string;
  #shown = "";
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(title: string, context: Context) {
    this.#title = title;
    this.#context = context;
  }

  show(state: CellState | undefined): void {
    const error = state?.error;
    const key = JSON.stringify([error?.message, error?.line, state?.shown, state?.entry?.text]);
    if (key === this.#shown) return;
    this.#shown = key;
    clearTimeout(this.#timer);
    this.element.classList.toggle("wrong", error !== undefined);
    if (!error) {
      this.element.replaceChildren(...valueNodes(state));
      return;
    }
    const where = error.line === 0 ? "" : `Line ${error.line}. `;
    const [first = "", ...more] = error.message.split("\n");
    this.element.replaceChildren(
      el("p", {}, el("b", {}, where), first),
      ...more.map((words) => el("p", {}, words)),
    );
    this.#timer = setTimeout(() => this.#context.say(`${this.#title}: ${where}${first}`), rest);
  }

  end(): void {
    clearTimeout(this.#timer);
  }
}

function valueNodes(state: CellState | undefined): (Node | string)[] {
  if (!state) return ["Not worked out yet."];
  const { entry, shown } = state;
  if (entry) return ["An entry: ", el("b", {}, entry.printed?.text ?? entry.text)];
  const figure = shown?.kind === "record" ? undefined : mainFigure(shown);
  if (!figure) return [printedValue(shown) || "It stands below."];
  const second = figure.second && el("small", {}, ...figureNodes(figure.second));
  return [
    el("span", { class: "n" }, ...figureNodes(figure.number)),
    figure.unit === "" ? "" : ` ${figure.unit}`,
    ...(second ? [" ", second] : []),
  ];
}
