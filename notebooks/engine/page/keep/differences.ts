import { readNotebook } from "../../document/index.ts";
import type { StateContent } from "../../store/index.ts";
import type { CellId, Notebook, TableText } from "../../types/index.ts";
import { type EnteredValue, idOf, partsOf } from "../book.ts";

/** One thing in which a notebook differs from what it was. Undefined: the notebook's own, or not there. */
export type Difference =
  | {
      readonly what: "entry";
      readonly id: CellId;
      readonly was: string | undefined;
      readonly is: string | undefined;
    }
  | {
      readonly what: "table";
      readonly id: CellId;
      readonly was: TableText | undefined;
      readonly is: TableText | undefined;
    }
  /** A formula, or the rows a table has in the document. */
  | {
      readonly what: "formula" | "rows";
      readonly id: CellId;
      readonly was: string | undefined;
      readonly is: string | undefined;
    }
  /** Prose and what a notebook uses: the parts that are only in one of them. */
  | {
      readonly what: "words";
      readonly file: string;
      readonly was: readonly string[];
      readonly is: readonly string[];
    };

/** In what a notebook differs from what it was, of the documents both know. */
export function differences(was: StateContent, is: StateContent): readonly Difference[] {
  const files = was.files.filter((file) => is.files.includes(file));
  return [
    ...files.flatMap((file) => textDifferences(file, { was, is })),
    ...entered(files, { was, is }),
  ];
}

interface Two {
  readonly was: StateContent;
  readonly is: StateContent;
}

function entered(files: readonly string[], { was, is }: Two): readonly Difference[] {
  const ids = new Set([...Object.keys(was.entered), ...Object.keys(is.entered)] as CellId[]);
  return [...ids]
    .filter((id) => files.includes(partsOf(id)[0]))
    .flatMap((id) => enteredDifference(id, { was: was.entered[id], is: is.entered[id] }));
}

function enteredDifference(
  id: CellId,
  { was, is }: { was: EnteredValue | undefined; is: EnteredValue | undefined },
): readonly Difference[] {
  if (isSame(was, is)) return [];
  if (typeof was === "object" || typeof is === "object")
    return [{ what: "table", id, was: tableOf(was), is: tableOf(is) }];
  return [{ what: "entry", id, was, is }];
}

const tableOf = (value: EnteredValue | undefined) =>
  typeof value === "object" ? value : undefined;

/** Whether an entry or a table holds the same. */
export function isSame(a: EnteredValue | undefined, b: EnteredValue | undefined): boolean {
  if (typeof a !== "object" || typeof b !== "object") return a === b;
  return JSON.stringify([a.columns, a.rows]) === JSON.stringify([b.columns, b.rows]);
}

function textDifferences(file: string, { was, is }: Two): readonly Difference[] {
  const [before, after] = [was.texts[file], is.texts[file]];
  if (before === undefined || after === undefined || before === after) return [];
  const [old, fresh] = [readNotebook(before, file), readNotebook(after, file)];
  const [wasParts, isParts] = [partsIn(old), partsIn(fresh)];
  const names = new Set([...wasParts.keys(), ...isParts.keys()]);
  const parts = [...names].flatMap((name): readonly Difference[] => {
    const [was, is] = [wasParts.get(name), isParts.get(name)];
    if (was?.content === is?.content) return [];
    const what = is?.what ?? was?.what ?? "formula";
    return [{ what, id: idOf(file, name), was: was?.content, is: is?.content }];
  });
  const words = {
    was: onlyIn(wordsIn(old), wordsIn(fresh)),
    is: onlyIn(wordsIn(fresh), wordsIn(old)),
  };
  // Where nothing else differs it is the order, or what stands after a cell's name.
  const hasWords = words.was.length + words.is.length > 0 || parts.length === 0;
  return hasWords ? [...parts, { what: "words", file, ...words }] : parts;
}

interface Part {
  readonly what: "formula" | "rows";
  readonly content: string;
}

/** The formulas and the given rows of a document, by the name of their cell. */
function partsIn({ blocks }: Notebook): ReadonlyMap<string, Part> {
  const parts = new Map<string, Part>();
  for (const block of blocks) {
    if (block.kind === "cell") parts.set(block.name, { what: "formula", content: block.formula });
    if (block.kind === "table") parts.set(block.name, { what: "rows", content: block.csv });
  }
  return parts;
}

/** Paragraphs and the like, and what is used. */
function wordsIn({ blocks }: Notebook): readonly string[] {
  return blocks
    .flatMap((block) => {
      if (block.kind === "prose") return block.text.split(/\n\s*\n/);
      return block.kind === "uses" ? [block.text] : [];
    })
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

function onlyIn(some: readonly string[], others: readonly string[]): readonly string[] {
  const left = new Map<string, number>();
  for (const part of others) left.set(part, (left.get(part) ?? 0) + 1);
  return some.filter((part) => {
    const count = left.get(part) ?? 0;
    left.set(part, count - 1);
    return count <= 0;
  });
}
