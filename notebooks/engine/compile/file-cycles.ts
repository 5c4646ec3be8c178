import { documentsNeeded } from "../document/index.ts";
import type { Notebook } from "../types/index.ts";

/**
 * For each file that uses itself by way of others: the shortest way round, which begins and ends
 * with the file.
 */
export function fileCycles(
  documents: ReadonlyMap<string, Notebook>,
): ReadonlyMap<string, readonly string[]> {
  const cycles = new Map<string, readonly string[]>();
  const needs = (file: string): readonly string[] => {
    const notebook = documents.get(file);
    return notebook === undefined ? [] : documentsNeeded(notebook);
  };
  for (const file of documents.keys()) {
    const way = wayRound(file, needs);
    if (way) cycles.set(file, way);
  }
  return cycles;
}

/** The shortest way from a thing back to itself, both ends included; undefined where there is none. */
export function wayRound<T>(start: T, next: (at: T) => Iterable<T>): readonly T[] | undefined {
  const from = new Map<T, T>();
  const waiting: T[] = [start];
  for (const at of waiting) {
    for (const to of next(at)) {
      if (to === start) return [...wayTo(at, from), start];
      if (from.has(to)) continue;
      from.set(to, at);
      waiting.push(to);
    }
  }
  return undefined;
}

function wayTo<T>(end: T, from: ReadonlyMap<T, T>): T[] {
  const way = [end];
  for (let at = from.get(end); at !== undefined; at = from.get(at)) way.unshift(at);
  return way;
}
