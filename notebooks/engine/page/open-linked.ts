import { createDocument, listDocuments, type Storage } from "../store/index.ts";
import { now } from "./now.ts";
import type { PageOptions } from "./options.ts";
import { tellNext } from "./told-next.ts";

export type Linked =
  | { readonly ok: true; readonly file: string }
  | { readonly ok: false; readonly words: string };

/**
 * Takes what a link holds in as a notebook of the reader's own, apart from all they keep. The same
 * link opened again opens the same notebook, with whatever was changed in it since.
 */
export async function openLinked(hash: string, options: PageOptions): Promise<Linked> {
  const { openLink } = await import("./share/open-link.ts");
  const opened = await openLink(options, hash);
  if (!opened.ok) return opened;
  const { key, title, file, text, carried, entered, left, otherVersion } = opened;
  const known = await openedBefore(options.storage, key);
  if (known !== undefined) return { ok: true, file: known };
  const made = await createDocument(options.storage, {
    file,
    taken: options.notebooks.map((each) => each.file),
    text,
    title,
    origin: { from: "link", key },
    carried,
    entered,
    changed: now(),
  });
  if (!made.good) return { ok: false, words: made.words };
  tellNext(remarksOn(left.length, otherVersion));
  return { ok: true, file: made.value.place };
}

/** What whoever opens the link should know before they trust its figures. */
function remarksOn(left: number, otherVersion: boolean): readonly string[] {
  const remarks: string[] = [];
  if (otherVersion)
    remarks.push(
      "The link was made from another version of this notebook, so its answers may differ from those its sender saw.",
    );
  if (left > 0)
    remarks.push(
      `${left} of what the link changed did not fit and ${left === 1 ? "is" : "are"} not used: it stands at the end of the notebook.`,
    );
  return remarks;
}

async function openedBefore(storage: Storage, key: string): Promise<string | undefined> {
  const { documents } = await listDocuments(storage);
  return documents.find(({ origin }) => origin.from === "link" && origin.key === key)?.place;
}
