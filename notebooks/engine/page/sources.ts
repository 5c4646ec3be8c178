import { el } from "./dom.ts";

/** Titles of sources by their id, as the site was built with. */
export type Sources = Readonly<Record<string, { readonly title: string }>>;

/** Sources in words: their titles; plain marks (`common practice`, `from memory`) as they are. */
export function sourceNodes(ids: readonly string[], sources: Sources): (Node | string)[] {
  return [...new Set(ids)].flatMap((id, index) => {
    const title = Object.hasOwn(sources, id) ? sources[id]?.title : undefined;
    const node = el(
      "span",
      { class: "src", title: title === undefined ? undefined : id },
      title ?? id,
    );
    return index === 0 ? [node] : ["; ", node];
  });
}
