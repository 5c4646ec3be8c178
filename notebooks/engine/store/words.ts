import type { ReadRecord } from "./records.ts";

/** Why something could not be kept, and what to do, in words for the reader. */
export function notKept(error: unknown): string {
  const name = error instanceof Error ? error.name : "";
  if (name === "QuotaExceededError")
    return "There is no room left in this browser to keep what you type: the disk, or the part of it that this page may use, is full. What you typed stays on this page and is tried again. To be safe, save the notebook as a file, then make room.";
  if (name === "VersionError" || name === "BlockedByNewer")
    return "A newer version of this workbook looks after what is kept in this browser. Nothing of it was changed, and what you type here is not kept. Save the notebook as a file, then load this page again.";
  if (name === "InvalidStateError" || name === "AbortError" || name === "UnknownError")
    return "This browser could not write what it keeps for this page: the disk may be full, the window private, or its data cleared meanwhile. What you typed stays on this page and is tried again. To be safe, save the notebook as a file.";
  const why = error instanceof Error && error.message !== "" ? error.message : String(error);
  return `What you typed could not be kept on this computer: ${why}. It stays on this page and is tried again. To be safe, save the notebook as a file.`;
}

/** Where nothing can be kept at all, as in a private window that refuses it. */
export const keepsNothing =
  "This browser keeps nothing for this page, as in some private windows. You can use everything, but what you type is gone when the page is closed: save the notebook as a file.";

/** Where a page cannot even be held safe for a moment. */
export const journalFull =
  "What you type cannot be put aside safely either. Save the notebook as a file now.";

/** Says why what is kept for a place is left as it is. */
export function notWrittenOver(
  place: string,
  read: Extract<ReadRecord<unknown>, { readonly is: "newer" | "broken" }>,
): string {
  const why =
    read.is === "newer" ? "was written by a newer version of this workbook" : "can't be read";
  return `What is kept for ${place} ${why}. It is left as it is, and what you type now is held apart: save the notebook as a file to be sure of it.`;
}

/** Says that another tab's text stands, or that a document can't be written, and where ours is. */
export function textElsewhere(
  place: string,
  came:
    | { readonly is: "overtaken" }
    | { readonly is: "removed" }
    | { readonly is: "left"; readonly words: string },
  { why, isKept }: { readonly why: string; readonly isKept: boolean },
): string {
  const ours = why === "left behind" ? "What was written last" : "What you wrote here";
  const where = isKept
    ? `${ours} is kept too, among the earlier states.`
    : `${ours} is only on this page: save it as a file now.`;
  if (came.is === "overtaken")
    return `${place} was changed in another tab as well: that text stands. ${where}`;
  return came.is === "removed"
    ? `${place} was removed in another tab. ${where}`
    : `${came.words} ${where}`;
}

/** Says that what was typed here stands over what another tab had typed. */
export function typedOver(names: readonly string[]): string {
  const what = names.join(", ");
  return `Another tab had changed the same: ${what}. What you typed last stands; the other is kept among the earlier states.`;
}
