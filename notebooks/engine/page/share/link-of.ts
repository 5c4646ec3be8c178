import { writeNotebook } from "../../document/index.ts";
import {
  type LinkDocument,
  type LinkRecord,
  versionOf,
  type WrittenLink,
  writeLink,
} from "../../share/index.ts";
import type { CellId, TableText } from "../../types/index.ts";
import type { Book, EnteredValue } from "../book.ts";
import type { Context } from "../context.ts";

/** Letters at most of a link: longer ones are cut short by mail programs on their way. */
const mostLetters = 8_000;

export type SharedLink =
  | { readonly ok: true; readonly address: string; readonly record: LinkRecord }
  | { readonly ok: false; readonly words: string };

/** The address that opens the notebook as it stands, with what was entered. */
export function shareLink(context: Context): SharedLink {
  const { book, editing } = context;
  const { main } = book;
  const entered = changedFrom(book);
  const own = ownDocuments(book, (file) => editing.mayEdit(file));
  const link = writeLink({
    file: main.file,
    version: versionOf(writeNotebook(main)),
    entered: Object.fromEntries(entered),
    defaults: defaultsOf(book, [...entered.keys()]),
    own,
  });
  if (!link.ok) return link;
  const address = addressOf(link);
  if (address.length <= mostLetters) return { ok: true, address, record: link.record };
  const why = own.length > 0 ? "with the text of a notebook of your own" : "with all that changed";
  return {
    ok: false,
    words:
      `A link would be ${address.length.toLocaleString("en")} letters long, ${why}; ` +
      `over ${mostLetters.toLocaleString("en")} many mail programs cut it short. Save the notebook as a file and send that.`,
  };
}

/** The page's own address, without what it was asked for: everything is after the `#`. */
function addressOf(link: Extract<WrittenLink, { readonly ok: true }>): string {
  const page = new URL(location.href);
  page.search = "";
  page.hash = link.text;
  return page.href;
}

/** What was entered and is not what the documents give anyhow. */
function changedFrom({ entered, states }: Book): ReadonlyMap<CellId, EnteredValue> {
  return new Map([...entered].filter(([id, value]) => value !== states.get(id)?.entry?.initial));
}

/** Where any document is the reader's own, the receiver needs its text, and that of the notebook. */
function ownDocuments(book: Book, isOwn: (file: string) => boolean): readonly LinkDocument[] {
  const { main } = book;
  const own = [...book.documents.values()].filter(({ file }) => file !== main.file && isOwn(file));
  if (own.length === 0 && !isOwn(main.file)) return [];
  return [main, ...own].map((one) => ({ file: one.file, text: writeNotebook(one) }));
}

function defaultsOf(book: Book, ids: readonly CellId[]): ReadonlyMap<CellId, TableText> {
  return new Map(
    ids.filter((id) => book.isTable(id)).map((id) => [id, book.defaultTable(id)] as const),
  );
}
