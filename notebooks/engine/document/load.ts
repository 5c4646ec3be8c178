import type { Notebook } from "../types/index.ts";
import { wrongFile } from "./info.ts";
import { readNotebook } from "./read.ts";

/** The files a notebook names in its `uses` blocks, each once, in their order. */
export function documentsNeeded(notebook: Notebook): readonly string[] {
  const files = new Set<string>();
  for (const block of notebook.blocks) {
    if (block.kind === "uses" && wrongFile(block.file) === undefined) files.add(block.file);
  }
  return [...files];
}

/**
 * Reads a notebook and all it uses, and all those use. `read` gives a file's text, or undefined
 * where there is none: a missing file is left out, and compiling reports it where it is named.
 */
export async function loadDocuments(
  main: string,
  read: (file: string) => Promise<string | undefined>,
): Promise<ReadonlyMap<string, Notebook>> {
  const documents = new Map<string, Notebook>();
  const asked = new Set<string>();
  const waiting = [main];
  for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
    if (asked.has(file)) continue;
    asked.add(file);
    const text = await read(file);
    if (text === undefined) continue;
    const notebook = readNotebook(text, file);
    documents.set(file, notebook);
    waiting.push(...documentsNeeded(notebook));
  }
  return documents;
}

/** The same from texts at hand, by file name. */
export function documentsOf(
  texts: Readonly<Record<string, string>>,
): ReadonlyMap<string, Notebook> {
  return new Map(Object.entries(texts).map(([file, text]) => [file, readNotebook(text, file)]));
}
