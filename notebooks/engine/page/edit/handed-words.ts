import type { PageOptions } from "../options.ts";
import type { HandedWord } from "./suggestions.ts";

/** What is handed to all cells, from the reference made of the doc comments; nothing where it can't be fetched. */
export async function handedWords(_options: PageOptions): Promise<readonly HandedWord[]> {
  return [];
}
