import type { CellId, Entered, TableText } from "../types/index.ts";
import { fromLetters, toLetters } from "./base64url.ts";
import { checksum } from "./checksum.ts";
import { opening } from "./is-link.ts";
import { packed, unpacked } from "./packing.ts";
import type { LinkDocument, LinkEntry, LinkRecord, LinkTable } from "./record.ts";
import { rowSteps } from "./row-steps.ts";
import { versionOfTable } from "./version.ts";
import { fromLists, toLists } from "./wire.ts";
import { linkWords, tooMuchForALink } from "./words.ts";

// A link after its `#`: open=FORMAT.LETTERS. The letters are base64url of four bytes of checksum,
// then of the packed lists.

const format = 1;

/** Letters at most that a link may have: what browsers and mail programs still carry. */
const mostLetters = 200_000;

export interface LinkParts {
  /** The notebook's file name. */
  readonly file: string;
  /** The version of its text: `versionOf(text)`. */
  readonly version: string;
  /** What was entered, in it and in the notebooks it uses. */
  readonly entered: Entered;
  /** The rows that tables have in their documents. */
  readonly defaults: ReadonlyMap<CellId, TableText>;
  /** Texts of documents the receiver cannot have, the notebook itself first. */
  readonly own?: readonly LinkDocument[];
}

export type WrittenLink =
  | { readonly ok: true; readonly text: string; readonly record: LinkRecord }
  | { readonly ok: false; readonly words: string };

export type LinkReading =
  | { readonly ok: true; readonly link: LinkRecord }
  | { readonly ok: false; readonly words: string };

/** The text of a link, to stand after the `#` of an address; words where no link can hold it all. */
export function writeLink({ file, version, entered, defaults, own = [] }: LinkParts): WrittenLink {
  const record: LinkRecord = {
    file,
    version,
    ...changesOf(entered, defaults),
    own,
  };
  const lists = toLists(record);
  // Read again before it is handed out: what could not be opened is no link.
  if (fromLists(lists) === undefined) return { ok: false, words: tooMuchForALink };
  const body = packed(JSON.stringify(lists));
  const bytes = new Uint8Array(4 + body.length);
  bytes.set(body, 4);
  new DataView(bytes.buffer).setUint32(0, checksum(body));
  const text = `${opening}${format}.${toLetters(bytes)}`;
  const isWhole = text.length <= mostLetters && unpacked(body) !== "too much";
  return isWhole ? { ok: true, text, record } : { ok: false, words: tooMuchForALink };
}

/**
 * Reads what stands after the `#`. It may come from anyone: it is taken whole or not at all, and
 * never throws.
 */
export function readLink(hash: string): LinkReading {
  const text = hash.trim().replace(/^#/, "");
  if (text.length > mostLetters) return { ok: false, words: linkWords.tooLong };
  const [, number, letters = ""] = /^open=(\d{1,6})\.([A-Za-z0-9_-]+)$/.exec(text) ?? [];
  if (number === undefined) return { ok: false, words: linkWords.broken };
  if (Number(number) > format) return { ok: false, words: linkWords.newer };
  if (number !== String(format)) return { ok: false, words: linkWords.broken };
  return readLetters(letters);
}

function readLetters(letters: string): LinkReading {
  const bytes = fromLetters(letters);
  if (bytes === undefined || bytes.length < 5) return { ok: false, words: linkWords.broken };
  const body = bytes.subarray(4);
  const sum = new DataView(bytes.buffer).getUint32(0);
  if (sum !== checksum(body)) return { ok: false, words: linkWords.broken };
  const json = unpacked(body);
  if (json === "too much") return { ok: false, words: linkWords.tooMuch };
  const link = json === undefined ? undefined : fromLists(parsed(json));
  return link === undefined ? { ok: false, words: linkWords.broken } : { ok: true, link };
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}

function changesOf(entered: Entered, defaults: ReadonlyMap<CellId, TableText>) {
  const entries: LinkEntry[] = [];
  const tables: LinkTable[] = [];
  for (const [id, value] of Object.entries(entered) as [CellId, string | TableText][]) {
    const at = id.indexOf("#");
    const [file, name] = [id.slice(0, at), id.slice(at + 1)];
    if (typeof value === "string") entries.push({ file, name, text: value });
    else {
      const from = defaults.get(id) ?? noRows(name);
      const version = versionOfTable(from);
      if (version !== versionOfTable(value))
        tables.push({ file, name, from: version, steps: rowSteps(from, value) });
    }
  }
  return { entries, tables };
}

function noRows(name: string): TableText {
  return { kind: "table", name, columns: [], rows: [], decimal: "." };
}
