import type { CellId } from "../../types/index.ts";
import { partsOf } from "../book.ts";
import type { Context } from "../context.ts";
import { type HandedWord, printedValue, type Vocabulary } from "./suggestions.ts";

/** What the formulas of a document may name now, its cells with their live values. */
export function vocabularyOf(
  context: Context,
  file: string,
  handed: readonly HandedWord[],
): Vocabulary {
  const { book } = context;
  const cells = [...cellNames(context, file)].flatMap((name) => {
    const id = book.find(name, file);
    if (id === undefined) return [];
    const { shown, entry } = book.states.get(id) ?? {};
    const printed = entry?.printed?.text ?? entry?.text ?? printedValue(shown);
    return [{ name, title: book.title(id), printed, shown }];
  });
  return { cells, handed };
}

/** The names of other cells that the formula of this one may take. */
export function otherNames(context: Context, id: CellId): ReadonlySet<string> {
  const [file, own] = partsOf(id);
  const names = cellNames(context, file);
  names.delete(own);
  return names;
}

/** The names a document gives to cells and tables of its own, and those it uses. */
function cellNames({ book }: Context, file: string): Set<string> {
  const blocks = book.documents.get(file)?.blocks ?? [];
  return new Set(
    blocks.flatMap((block) => {
      if (block.kind === "prose") return [];
      return block.kind === "uses" ? block.names.map(({ name }) => name) : [block.name];
    }),
  );
}
