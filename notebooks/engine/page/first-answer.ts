import type { FromRoom } from "../types/index.ts";
import type { Book } from "./book.ts";
import { mainFigure } from "./moves.ts";
import type { ShelfAnswer } from "./shelf.ts";

/**
 * Waits for the first pinned answer. While long work goes on it may have a value that still gets
 * better, so it stands once nothing it rests on is being worked out.
 */
export class FirstAnswer {
  private readonly book: Pick<Book, "pinned" | "title">;
  private readonly today: string;
  private answer: ShelfAnswer | undefined;

  constructor(book: Pick<Book, "pinned" | "title">, today: string) {
    this.book = book;
    this.today = today;
  }

  /** The answer once it stands, undefined where everything rests without one. */
  heard(message: FromRoom): ShelfAnswer | undefined | "not yet" {
    const { book, today } = this;
    const [first] = book.pinned();
    if (message.kind === "values")
      for (const state of message.cells) {
        if (state.id !== first) continue;
        const figure = mainFigure(state.shown);
        this.answer = figure && { title: book.title(state.id), figure, on: today };
      }
    if (message.kind !== "settled" || first === undefined) return "not yet";
    if (message.working.length === 0) return this.answer;
    return this.answer === undefined || message.working.includes(first) ? "not yet" : this.answer;
  }
}
