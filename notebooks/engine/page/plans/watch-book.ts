import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";

/** How often is looked (milliseconds): often enough to seem at once. */
const pause = 200;

export interface BookChange {
  readonly documents: boolean;
  readonly entered: boolean;
  readonly units: boolean;
  readonly states: boolean;
}

/**
 * Tells when what the open notebook holds has become other than it was: looked at now and then, as a
 * sheet is open seldom and what changes a book should not need to know of it. Gives what ends it.
 */
export function watchBook(context: Context, changed: (change: BookChange) => void): () => void {
  let last = lookAt(context);
  const timer = setInterval(() => {
    const now = lookAt(context);
    const change: BookChange = {
      documents: !sameMap(last.documents, now.documents),
      entered: !sameMap(last.entered, now.entered),
      units: last.units !== now.units,
      states: last.working !== now.working || !sameMap(last.states, now.states),
    };
    last = now;
    if (Object.values(change).includes(true)) changed(change);
  }, pause);
  return () => clearInterval(timer);
}

function lookAt({ book, driver }: Context) {
  return {
    documents: new Map<string, unknown>(book.documents),
    entered: new Map<CellId, unknown>(book.entered),
    states: new Map<CellId, unknown>(book.states),
    working: [...book.working].join(" "),
    units: driver.units,
  };
}

function sameMap(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): boolean {
  if (a.size !== b.size) return false;
  for (const [key, value] of a) if (b.get(key) !== value) return false;
  return true;
}
