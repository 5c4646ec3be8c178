import type { Figure } from "../types/index.ts";
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
  answers: ReadonlyMap<string, ShelfAnswer>,
  today: string,
): HTMLElement {
  const books = notebooks.map(({ file, title, about }) => {
    const answer = answers.get(file);
    return el(
      "li",
      {},
      el(
        "a",
        { href: `?notebook=${encodeURIComponent(file)}` },
        el("b", {}, title),
        el("span", {}, about),
      ),
      answer ? lastAnswer(answer, today) : undefined,
    );
  });
  return el(
    "main",
    { id: "page", class: "shelf", tabindex: -1 },
    el("h1", {}, "The shelf"),
    el(
      "p",
      { class: "sub" },
      "Each notebook works one thing out. They share the garden’s tables: what you change in one is changed in all.",
    ),
    el("ol", { class: "books" }, ...books),
  );
}

function lastAnswer({ title, figure, on }: ShelfAnswer, today: string): HTMLElement {
  return el(
    "span",
    { class: "last" },
    el("b", {}, ...figureNodes(figure.text)),
    el("small", {}, `${title}, ${on === today ? "today" : dayInWords(on)}`),
  );
}

function dayInWords(iso: string): string {
  const date = new Date(`${iso}T12:00:00`);
  return Number.isNaN(date.getTime())
    ? iso
    : date.toLocaleDateString("en", { day: "numeric", month: "long", year: "numeric" });
}
