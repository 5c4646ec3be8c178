import { partsOf } from "../book.ts";
import type { Context } from "../context.ts";
import { type HandedWord, printedValue, type Vocabulary } from "./suggestions.ts";

/** What the formulas of a document may name now, its cells with their live values. */
export function vocabularyOf(
  { book }: Context,
  file: string,
  handed: readonly HandedWord[],
): Vocabulary {
  const names = (book.documents.get(file)?.blocks ?? []).flatMap((block) => {
    if (block.kind === "prose") return [];
    return block.kind === "uses" ? block.names.map(({ name }) => name) : [block.name];
  });
  const cells = [...new Set(names)].flatMap((name) => {
    const id = book.find(name, file);
    if (id === undefined) return [];
    const { shown, entry } = book.states.get(id) ?? {};
    const printed = entry?.printed?.text ?? entry?.text ?? printedValue(shown);
    return [{ name, title: book.title(id), printed, shown }];
  });
  return { cells, handed };
}

/** The names of other cells that the formula of this one may take. */
export function otherNames(context: Context, id: string): ReadonlySet<string> {
  const [file, own] = partsOf(id as `${string}#${string}`);
  const { cells } = vocabularyOf(context, file, []);
  return new Set(cells.map(({ name }) => name).filter((name) => name !== own));
}
