import { loadDocuments, writeNotebook } from "../../document/index.ts";
import {
  applyLink,
  type LeftOut,
  type LinkRecord,
  readLink,
  versionOf,
  withLeftOut,
} from "../../share/index.ts";
import type { CellId, Entered, Notebook, TableText } from "../../types/index.ts";
import type { PageOptions } from "../options.ts";

/** What a link makes: a notebook of the reader's own, apart from all they keep. */
export interface OpenedLink {
  readonly ok: true;
  /** The same for the same link, so that it opens the same copy again. */
  readonly key: string;
  readonly title: string;
  /** What its file may be called. */
  readonly file: string;
  readonly text: string;
  /** Texts of the documents it uses, by file: the sender's, else the shipped ones. */
  readonly carried: ReadonlyMap<string, string>;
  /** Only what fits these texts. */
  readonly entered: Entered;
  /** What does not: it stands at the end of the text, and is not used. */
  readonly left: readonly LeftOut[];
  /** The notebook is another version than the one the link was made from. */
  readonly otherVersion: boolean;
}

export type LinkOutcome = OpenedLink | { readonly ok: false; readonly words: string };

/** Reads a link; nothing is stored by it. The texts in it are a stranger's. */
export async function openLink(
  { loadNotebook, csv }: Pick<PageOptions, "loadNotebook" | "csv">,
  hash: string,
): Promise<LinkOutcome> {
  const reading = readLink(hash);
  if (!reading.ok) return reading;
  const { link } = reading;
  const sent = new Map(link.own.map(({ file, text }) => [file, text]));
  const documents = await loadDocuments(
    link.file,
    async (file) => sent.get(file) ?? (await loadNotebook(file)),
  );
  const main = documents.get(link.file);
  if (main === undefined)
    return {
      ok: false,
      words: `The link is for a notebook ${link.file}, which this workbook does not have. Ask for it as a file.`,
    };
  const { entered, left } = applyLink(link, documents, defaultsOf(link, documents, csv.readCsv));
  const text = writeNotebook(main);
  const carried = [...documents.values()].filter((one) => one !== main);
  return {
    ok: true,
    key: await keyOf(hash),
    title: main.title,
    file: link.file,
    text: withLeftOut(text, left),
    carried: new Map(carried.map((one) => [one.file, writeNotebook(one)])),
    entered,
    left,
    otherVersion: versionOf(text) !== link.version,
  };
}

/** The rows of the tables a link is about, as these documents have them. */
function defaultsOf(
  { tables }: LinkRecord,
  documents: ReadonlyMap<string, Notebook>,
  readCsv: PageOptions["csv"]["readCsv"],
): ReadonlyMap<CellId, TableText> {
  const defaults = new Map<CellId, TableText>();
  for (const { file, name } of tables)
    for (const block of documents.get(file)?.blocks ?? []) {
      if (block.kind !== "table" || block.name !== name) continue;
      try {
        defaults.set(`${file}#${name}`, readCsv(block.csv, name));
      } catch {
        // A table that can't be read has no rows for a change to fit.
      }
    }
  return defaults;
}

async function keyOf(hash: string): Promise<string> {
  const text = hash.trim().replace(/^#/, "");
  const sum = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return [...new Uint8Array(sum).subarray(0, 12)]
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("");
}
