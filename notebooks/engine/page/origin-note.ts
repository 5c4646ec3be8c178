import type { DocumentRecord } from "../store/index.ts";
import { button, el } from "./dom.ts";

export interface OriginNoteOptions {
  /** Whether what it brought along is used, or the reader's own garden. */
  readonly apart: boolean;
  /** Uses the reader's own garden from now on, or again what the notebook brought along. */
  useOwnGarden(own: boolean): void;
}

/** Where a stranger's notebook came from, and what it can and cannot do; nothing for the reader's own. */
export function originNote(
  { origin }: Pick<DocumentRecord, "origin">,
  { apart, useOwnGarden }: OriginNoteOptions,
): HTMLElement | undefined {
  if (origin.from !== "file" && origin.from !== "link") return undefined;
  const came =
    origin.from === "file"
      ? `This notebook came from the file ${origin.name}.`
      : "This notebook came from a link.";
  const words = apart
    ? "It uses the tables that came with it; yours are not touched."
    : "It uses your own garden’s tables.";
  return el(
    "aside",
    { class: "origin", "aria-label": "Where this notebook came from" },
    el(
      "p",
      {},
      el("b", {}, came),
      " Its formulas are a program that somebody wrote. They run in a closed room: they can send nothing away and see nothing else that you keep. ",
      words,
    ),
    button(apart ? "Use my own garden" : "Use what came with it", () => useOwnGarden(apart)),
  );
}
