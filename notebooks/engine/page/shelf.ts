import type { Figure } from "../types/index.ts";
import { dayInWords } from "./days.ts";
import { el } from "./dom.ts";
import { figureNodes } from "./figure-text.ts";

/** A notebook that can be opened, as the shelf lists it. */
export interface ShelfNotebook {
  readonly file: string;
  readonly title: string;
  /** What it answers, in a line. */
  readonly about: string;
}

export interface ShelfAnswer {
  readonly title: string;
  readonly figure: Figure;
  readonly on: string;
}

/** The notebooks in day-book form: name, what it answers, its first pinned answer and the date. */
export function shelf(
  notebooks: readonly ShelfNotebook[],
  today: string,
): { readonly element: HTMLElement; answer(file: string, answer: ShelfAnswer): void } {
  const places = new Map<string, HTMLElement>();
  const books = notebooks.map(({ file, title, about }) => {
    const link = `?notebook=${encodeURIComponent(file)}`;
    const last = el("span", { class: "last" });
    places.set(file, last);
    return el("li", {}, el("a", { href: link }, el("b", {}, title), el("span", {}, about)), last);
  });
  const words =
    "Each notebook works one thing out. They share the garden’s tables: what you change in one is changed in all.";
  const element = el(
    "main",
    { id: "page", class: "shelf", tabindex: -1 },
    el("h1", {}, "The shelf"),
    el("p", { class: "sub" }, words),
    el("ol", { class: "books" }, ...books),
  );
  return {
    element,
    answer: (file, answer) => places.get(file)?.replaceChildren(...lastAnswer(answer, today)),
  };
}

function lastAnswer({ title, figure, on }: ShelfAnswer, today: string): HTMLElement[] {
  return [
    el("b", {}, ...figureNodes(figure.text)),
    el("small", {}, `${title}, ${on === today ? "today" : dayInWords(on)}`),
  ];
}
