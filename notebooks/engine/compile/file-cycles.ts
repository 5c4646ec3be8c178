import { documentsNeeded } from "../document/index.ts";
import type { Notebook } from "../types/index.ts";
import { shortestWay } from "./ways.ts";

/** For a file and one that it uses: the way round back to it, or undefined where there is none. */
export type FileCycles = (file: string, used: string) => readonly string[] | undefined;

export function fileCycles(documents: ReadonlyMap<string, Notebook>): FileCycles {
  const needed = new Map<string, readonly string[]>();
  for (const [file, notebook] of documents) needed.set(file, documentsNeeded(notebook));
  return (file, used) => {
    const way = shortestWay(used, file, (at) => needed.get(at) ?? []);
    return way === undefined ? undefined : [file, ...way];
  };
}
