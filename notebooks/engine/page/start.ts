import { el } from "./dom.ts";
import { openNotebook } from "./open-notebook.ts";
import type { PageOptions } from "./options.ts";
import { shelf } from "./shelf.ts";
import { findAnswers } from "./shelf-answers.ts";
import { top } from "./top.ts";

export type { Csv } from "./context.ts";
export type { PageOptions } from "./options.ts";
export type { RoomCode } from "./room-link.ts";
export type { ShelfNotebook } from "./shelf.ts";

/**
 * Draws the page the address asks for: `?notebook=FILE` opens that notebook, anything else the
 * shelf.
 */
export async function startPage(options: PageOptions): Promise<void> {
  const file = new URLSearchParams(location.search).get("notebook");
  if (file === null) return showShelf(options);
  if (await openNotebook(file, options)) return goToHash();
  await showShelf(options, `There is no notebook called ${file}.`);
}

async function showShelf(options: PageOptions, trouble?: string): Promise<void> {
  const { root, notebooks, today } = options;
  document.title = "The shelf · Bedwright";
  const shown = shelf(notebooks, today);
  root.replaceChildren(
    el("a", { class: "skip", href: "#page" }, "Skip to the page"),
    top({ title: undefined, units: "us", setUnits: () => undefined, setView: () => undefined }),
    ...(trouble === undefined ? [] : [el("p", { class: "broken troubles" }, trouble)]),
    shown.element,
  );
  const files = notebooks.map(({ file }) => file);
  await findAnswers(files, options, (file, answer) => shown.answer(file, answer));
}

/** What the address names exists only now. */
function goToHash(): void {
  const id = decodeURIComponent(location.hash.slice(1));
  if (id !== "") document.getElementById(id)?.scrollIntoView();
}
