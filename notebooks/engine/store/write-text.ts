import { documentKey } from "./documents.ts";
import type { UnsafeText } from "./journal.ts";
import type { DocumentRecord } from "./record-types.ts";
import { readRecord } from "./records.ts";
import type { Storage } from "./storage.ts";
import { notWrittenOver } from "./words.ts";

/** What came of writing a text over the revision it was made from. */
export type WrittenText =
  | { readonly is: "written"; readonly record: DocumentRecord }
  /** Somebody else's stands: ours must be kept elsewhere. */
  | { readonly is: "overtaken"; readonly stands: DocumentRecord }
  | { readonly is: "removed" }
  | { readonly is: "left"; readonly words: string };

/**
 * Writes a document's text, but only over the revision that it was made from, or over what the same
 * page wrote: a page writes over no revision it does not know, so what it wrote last leads on to
 * what it writes now.
 *
 * @param writer a name that no other open page has
 */
export async function writeText(
  storage: Storage,
  place: string,
  { text, title, revision, changed, writer }: UnsafeText & { readonly writer: string },
): Promise<WrittenText> {
  let came: WrittenText = { is: "removed" };
  await storage.change(documentKey(place), (before): DocumentRecord | undefined => {
    const read = readRecord("document", before);
    if (read.is === "absent") {
      came = { is: "removed" };
      return undefined;
    }
    if (read.is !== "record") {
      came = { is: "left", words: notWrittenOver(place, read) };
      return undefined;
    }
    const there = read.record;
    const same = there.text === text;
    if (!same && there.revision !== revision && there.writer !== writer) {
      came = { is: "overtaken", stands: there };
      return undefined;
    }
    const record = same
      ? there
      : { ...there, text, title, changed, writer, revision: there.revision + 1 };
    came = { is: "written", record };
    return same ? undefined : record;
  });
  return came;
}
