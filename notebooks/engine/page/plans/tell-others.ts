import type { Context } from "../context.ts";

/** The plans of the open notebook are others: pages beside this one may show them. */
export function tellOthers({ book, options }: Context): void {
  options.others?.changed({ what: "plans", main: book.main.file });
}

/** Calls back when another page has changed the plans of the open notebook; gives what ends it. */
export function hearOthers({ book, options }: Context, changed: () => void): () => void {
  const stop = options.others?.heard((news) => {
    if (news.what === "plans" && news.main === book.main.file) changed();
  });
  return stop ?? (() => undefined);
}
