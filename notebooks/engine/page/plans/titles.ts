import type { CellId } from "../../types/index.ts";
import { type Book, idOf } from "../book.ts";

/**
 * What people call each cell, told apart where two are called the same: "Price of one (after First
 * length)", as they stand one under the other in the notebook.
 */
export function titlesOf(book: Book): (id: CellId) => string {
  const named = [...book.documents.values()].flatMap(({ file, blocks }) => {
    let before = "";
    return blocks.flatMap((block) => {
      if (block.kind !== "cell" && block.kind !== "table") return [];
      const { title } = block.hints;
      const one = { id: idOf(file, block.name), title, before };
      before = title;
      return [one];
    });
  });
  const counts = new Map<string, number>();
  for (const { title } of named) counts.set(title, (counts.get(title) ?? 0) + 1);
  const titles = new Map<CellId, string>();
  for (const { id, title, before } of named) {
    const isShared = (counts.get(title) ?? 0) > 1 && before !== "" && before !== title;
    titles.set(id, isShared ? `${title} (after ${before})` : title);
  }
  return (id) => titles.get(id) ?? book.title(id);
}
