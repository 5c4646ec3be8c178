import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";

export interface BookChange {
  readonly documents: boolean;
  readonly entered: boolean;
  readonly units: boolean;
  readonly states: boolean;
}

/** Tells what of the open notebook has become other than it was, once a frame. Gives what ends it. */
export function watchBook(context: Context, changed: (change: BookChange) => void): () => void {
  let last = lookAt(context);
  let frame: number | undefined;
  const look = () => {
    frame = undefined;
    const now = lookAt(context);
    const change: BookChange = {
      documents: !sameMap(last.documents, now.documents),
      entered: !sameMap(last.entered, now.entered),
      units: last.units !== now.units,
      states: last.working !== now.working || !sameMap(last.states, now.states),
    };
    last = now;
    if (Object.values(change).includes(true)) changed(change);
  };
  const unwatch = context.watch(() => {
    frame ??= requestAnimationFrame(look);
  });
  return () => {
    unwatch();
    if (frame !== undefined) cancelAnimationFrame(frame);
  };
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
