import type { Figure } from "../types/index.ts";
import { dayInWords } from "./days.ts";
import { button, el } from "./dom.ts";
import { figureNodes } from "./figure-text.ts";

/** A notebook that can be opened, as the shelf lists it. */
export interface ShelfNotebook {
  readonly file: string;
  readonly title: string;
  /** What it answers, in a line. */
  readonly about: string;
  /** Whether another shipped notebook takes cells or tables from it. */
  readonly used?: boolean;
  /** Changes with every change of its text; shipped ones have it. */
  readonly version?: string;
}

export interface ShelfAnswer {
  readonly title: string;
  readonly figure: Figure;
  readonly on: string;
}

export interface ShelfOptions {
  /** The reader's own, the one changed last first. */
  readonly own: readonly ShelfNotebook[];
  readonly shipped: readonly ShelfNotebook[];
  readonly today: string;
  newNotebook(): void;
  openFile(): void;
  /** What else can be done with all that is kept. */
  readonly more: readonly Node[];
}

/** The notebooks in day-book form: name, what it answers, its first pinned answer and the date. */
export function shelf({ own, shipped, today, newNotebook, openFile, more }: ShelfOptions): {
  readonly element: HTMLElement;
  answer(file: string, answer: ShelfAnswer): void;
} {
  const places = new Map<string, HTMLElement>();
  const list = (books: readonly ShelfNotebook[]) =>
    el("ol", { class: "books" }, ...books.map((book) => line(book, places)));
  const words =
    "Each notebook works one thing out. They share the garden’s tables: what you change in one is changed in all.";
  const mine =
    own.length === 0 ? [] : [el("h2", {}, "Yours"), list(own), el("h2", {}, "Bedwright’s own")];
  const element = el(
    "main",
    { id: "page", class: "shelf", tabindex: -1 },
    el("h1", {}, "The shelf"),
    el("p", { class: "sub" }, words),
    ...mine,
    list(shipped),
    el(
      "p",
      { class: "acts" },
      button("New notebook", newNotebook),
      button("Open a file", openFile),
      el("a", { href: "?reference" }, "Every calculation, explained"),
    ),
    ...more,
  );
  return {
    element,
    answer: (file, answer) => places.get(file)?.replaceChildren(...lastAnswer(answer, today)),
  };
}

function line(
  { file, title, about }: ShelfNotebook,
  places: Map<string, HTMLElement>,
): HTMLElement {
  const link = `?notebook=${encodeURIComponent(file)}`;
  const last = el("span", { class: "last" });
  places.set(file, last);
  return el("li", {}, el("a", { href: link }, el("b", {}, title), el("span", {}, about)), last);
}

function lastAnswer({ title, figure, on }: ShelfAnswer, today: string): HTMLElement[] {
  return [
    el("b", {}, ...figureNodes(figure.text)),
    el("small", {}, `${title}, ${on === today ? "today" : dayInWords(on)}`),
  ];
}
