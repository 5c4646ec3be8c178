import { el } from "./dom.ts";

/** A text file as it was read, or why it can't be, in words for the reader. */
export type ReadFile =
  | { readonly ok: true; readonly name: string; readonly text: string }
  | { readonly ok: false; readonly words: string };

/** Lets the reader choose a file; undefined where they chose none. */
export function pickFile(accept: string): Promise<File | undefined> {
  return new Promise((resolve) => {
    const input = el("input", { type: "file", accept, hidden: true });
    const end = () => {
      resolve(input.files?.[0]);
      input.remove();
    };
    input.addEventListener("cancel", end);
    input.addEventListener("change", end);
    document.body.append(input);
    input.click();
  });
}

/**
 * Reads a file as UTF-8 text. Read loosely, letters of another encoding would be lost in silence.
 *
 * @param largest the most it may hold, in millions of bytes
 */
export async function readTextFile(file: File, largest: number): Promise<ReadFile> {
  const { name } = file;
  const refused = (why: string) =>
    ({ ok: false, words: `${name} can’t be opened: ${why}` }) as const;
  if (file.size > largest * 1e6) return refused(`it is larger than ${largest} MB.`);
  try {
    const bytes = await file.arrayBuffer();
    return { ok: true, name, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch (error) {
    return refused(
      error instanceof TypeError
        ? "it is not UTF-8 text. Save it as UTF-8 and open it again."
        : "it could not be read.",
    );
  }
}
