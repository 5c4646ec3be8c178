import { writeNotebook } from "../document/index.ts";
import type { Notebook } from "../types/index.ts";

/** The document with another title, or with one where it had none. */
export function withTitle(notebook: Notebook, title: string): string {
  let found = false;
  const texts = notebook.blocks.map(({ kind, text }) => {
    if (found || kind !== "prose") return text;
    return text.replace(/^# .*$/m, () => {
      found = true;
      return `# ${title}`;
    });
  });
  return found ? texts.join("") : `# ${title}\n\n${writeNotebook(notebook)}`;
}
