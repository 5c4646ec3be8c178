import { isLink } from "../share/is-link.ts";
import { openNotebook } from "./open-notebook.ts";
import type { PageOptions } from "./options.ts";

export type { Csv } from "./context.ts";
export type { PageOptions } from "./options.ts";
export type { RoomCode } from "./room-link.ts";
export type { ShelfNotebook } from "./shelf.ts";

/**
 * Draws the page the address asks for: `?notebook=FILE` opens that notebook, `?reference` the
 * reference of the calculations, anything else the shelf. A link's notebook stands after the `#`.
 */
export async function startPage(options: PageOptions): Promise<void> {
  if (isLink(location.hash)) {
    const { openLinked } = await import("./open-linked.ts");
    const linked = await openLinked(location.hash, options);
    // The link itself stays out of the address: going on from here changes the copy, not the link.
    history.replaceState(
      null,
      "",
      linked.ok ? `?notebook=${encodeURIComponent(linked.file)}` : "./",
    );
    if (!linked.ok) return showShelf(options, linked.words);
  }
  // A link pasted over the address of an open page changes nothing but what stands after the `#`.
  addEventListener("hashchange", () => {
    if (isLink(location.hash)) location.reload();
  });
  const asked = new URLSearchParams(location.search);
  if (asked.has("reference")) {
    const { openReference } = await import("./reference/open-reference.ts");
    return openReference(asked.get("reference") ?? undefined, options);
  }
  const file = asked.get("notebook");
  if (file === null) return showShelf(options);
  if (await openNotebook(file, options)) return goToHash();
  await showShelf(options, `There is no notebook called ${file}.`);
}

/** What the address names exists only now. */
function goToHash(): void {
  const id = decodeURIComponent(location.hash.slice(1));
  if (id !== "") document.getElementById(id)?.scrollIntoView();
}

/** The shelf's code is fetched where it is shown: whoever opens a notebook need not wait for it. */
async function showShelf(options: PageOptions, trouble?: string): Promise<void> {
  const { showShelf: show } = await import("./show-shelf.ts");
  await show(options, trouble);
}
