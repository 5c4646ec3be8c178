import { wrongFile } from "./info.ts";

/** The heading under which a saved notebook carries what it was worked out with. */
export const carriedHeading = "## Carried inside this file";

/** What stands under the heading, for whoever reads the file elsewhere. */
export const carriedWords =
  "What this notebook was worked out with: the notebooks it uses, and what was typed into its fields.";

/** The words of the fence around what was entered. */
export const enteredInfo = "csv entered";

/** What a block under the heading holds. */
export type CarriedInfo =
  | {
      readonly kind: "notebook";
      readonly file: string;
      /** Its last line has no line end of its own: the one before the fence is not part of it. */
      readonly unended: boolean;
      readonly wrong: string | undefined;
    }
  | { readonly kind: "entered" };

/** Reads the words after a fence; undefined where the block carries nothing. */
export function readCarriedInfo(info: string): CarriedInfo | undefined {
  const words = info.trim();
  if (/^csv\s+entered$/.test(words)) return { kind: "entered" };
  const [, named = ""] = /^markdown\s+notebook(?:\s+(.*))?$/.exec(words) ?? [];
  if (!/^markdown\s+notebook(\s|$)/.test(words)) return undefined;
  const [, unendedFile] = /^(.*\.md) unended$/.exec(named) ?? [];
  const file = unendedFile ?? named;
  return { kind: "notebook", file, unended: unendedFile !== undefined, wrong: wrongFile(file) };
}

/** The words after the fence of a used notebook, written so that CommonMark reads them back. */
export function notebookInfo(file: string, unended: boolean): string {
  // CommonMark takes backslashes and entities away.
  const written = file.replace(/&(?=[#\w]+;)/g, "\\&");
  return `markdown notebook ${written}${unended ? " unended" : ""}`;
}
