import { readNotebook } from "../document/index.ts";
import { unpack } from "../document/seldom.ts";
import { createDocument, safeFile } from "../store/index.ts";
import type { CellId, Entered } from "../types/index.ts";
import { idOf, partsOf } from "./book.ts";
import { now } from "./now.ts";
import type { PageOptions } from "./options.ts";

/** A document larger than this, in MB, is no notebook somebody wrote. */
export const largestNotebook = 5;

export type Opened =
  | { readonly ok: true; readonly file: string; readonly remarks: readonly string[] }
  | { readonly ok: false; readonly words: string };

/**
 * Takes a notebook's file in as one of the reader's own: under a name of its own, with the notebooks
 * and entries it carries kept apart from the reader's garden. Nothing that is kept is changed.
 */
export async function openFile(
  { name, text }: { readonly name: string; readonly text: string },
  { storage, notebooks, csv }: PageOptions,
): Promise<Opened> {
  if (!/\.(?:md|markdown|txt)$/i.test(name))
    return { ok: false, words: `${name} is not a notebook: those are text files ending in .md.` };
  if (text.includes("\0")) return { ok: false, words: `${name} is no text file.` };
  const own = safeFile(name);
  const { text: main, carried, entered, problems } = unpack(text, own);
  const made = await createDocument(storage, {
    file: own,
    taken: notebooks.map((each) => each.file),
    text: main,
    title: readNotebook(main, own).title,
    origin: { from: "file", name },
    carried,
    entered: filledIn(entered, new Map([...carried, [own, main]]), csv.readCsv),
    changed: now(),
  });
  if (!made.good) return { ok: false, words: made.words };
  return { ok: true, file: made.value.place, remarks: problems.map(({ message }) => message) };
}

/** What was entered, with the rows of tables read. */
function filledIn(
  entered: Readonly<Record<CellId, string>>,
  texts: ReadonlyMap<string, string>,
  readCsv: PageOptions["csv"]["readCsv"],
): Entered {
  const tables = new Set<string>();
  for (const [file, text] of texts)
    for (const block of readNotebook(text, file).blocks)
      if (block.kind === "table") tables.add(idOf(file, block.name));
  return Object.fromEntries(
    Object.entries(entered).map(([id, text]) => [
      id,
      tables.has(id) ? readCsv(text, partsOf(id as CellId)[1]) : text,
    ]),
  );
}
