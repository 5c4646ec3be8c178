import { documentKey } from "./documents.ts";
import type { UnsafeText } from "./journal.ts";
import type { DocumentRecord } from "./record-types.ts";
import { readRecord } from "./records.ts";
import type { Step } from "./storage.ts";
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
  step: Step,
  place: string,
  { text, title, revision, changed, writer }: UnsafeText & { readonly writer: string },
): Promise<WrittenText> {
  const read = readRecord("document", await step.get(documentKey(place)));
  if (read.is === "absent") return { is: "removed" };
  if (read.is !== "record") return { is: "left", words: notWrittenOver(place, read) };
  const there = read.record;
  if (there.text === text) return { is: "written", record: there };
  const isOurs = writer !== "" && there.writer === writer;
  if (there.revision !== revision && !isOurs) return { is: "overtaken", stands: there };
  const record = { ...there, text, title, changed, writer, revision: there.revision + 1 };
  await step.put(documentKey(place), record);
  return { is: "written", record };
}
