import type { Book } from "./book.ts";
import { type Moves, mainFigure } from "./moves.ts";

/** What moved, for whoever listens: the first pinned answer that did, and how many more. */
export function moveWords(book: Book, moves: Moves): string | undefined {
  const moved = moves.moved();
  if (moved.length === 0) return undefined;
  const first = book.pinned().find((id) => moved.includes(id)) ?? moved[0];
  if (first === undefined) return undefined;
  const now = mainFigure(book.states.get(first)?.shown);
  const was = moves.was(first);
  const rest = moved.length - 1;
  const others =
    rest === 0 ? "" : rest === 1 ? " 1 other figure moved." : ` ${rest} other figures moved.`;
  return `${book.title(first)}: ${now?.text ?? ""}, was ${was?.text ?? ""}.${others}`;
}
