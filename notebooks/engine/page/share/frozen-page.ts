import type { CellId } from "../../types/index.ts";
import { slotId } from "../cell-slot.ts";
import type { Context } from "../context.ts";
import { el } from "../dom.ts";
import { tellPaper } from "../on-paper.ts";
import { workingNodes } from "../working.ts";
import { onlyPlainAttributes } from "./plain-attributes.ts";

/** What only serves to change, or says how to. */
const forChanging = [
  "[hidden]",
  "dialog",
  "script",
  "input[type=file]",
  ".blocktools",
  ".addhere",
  ".slip",
  ".cellname",
  ".cell.quiet:not(.asked)",
  ".under",
  ".pager",
  ".aside-more",
  ".paste-panel",
  ".hint.back",
  ".tl .acts",
  ".tallybox > summary",
  ".uses > .over",
  ".sawing",
].join(", ");

/** The notebook as it stands, as a tree that needs no script: a copy, the page itself is left alone. */
export function frozenPage(context: Context): HTMLElement {
  const live = context.options.root.querySelector(".frame");
  if (!live) throw new Error("there is no notebook on this page");
  const frame = el("div", { class: "frame" });
  // As on paper: whole tables, drawings in a form for a sheet.
  tellPaper(true);
  try {
    frame.append(...[...live.children].map((child) => child.cloneNode(true)));
    fieldsToText(live, frame);
  } finally {
    tellPaper(false);
  }
  for (const element of frame.querySelectorAll(forChanging)) element.remove();
  // What may be changed is said at the side of the head; the place keeps its room.
  for (const side of frame.querySelectorAll(".head > .side")) side.replaceChildren();
  fillWorkings(frame, context);
  fillUses(frame, context);
  openTally(frame);
  buttonsToText(frame);
  linksOut(frame);
  for (const element of [frame, ...frame.querySelectorAll("*")]) onlyPlainAttributes(element);
  linksWithin(frame);
  return frame;
}

/** Each entry becomes the text in its tray. What a field holds is no attribute of it, so it is asked. */
function fieldsToText(live: Element, frame: HTMLElement): void {
  const fields = "input, select, textarea";
  const copies = [...frame.querySelectorAll(fields)];
  const texts = [...live.querySelectorAll(fields)].map(textIn);
  for (const [index, copy] of copies.entries()) {
    if (copy.closest("fieldset")) continue;
    copy.replaceWith(el("span", { class: "typed" }, texts[index] ?? ""));
  }
  const picks = [...live.querySelectorAll("fieldset.pick")].map(chosenIn);
  for (const [index, pick] of [...frame.querySelectorAll("fieldset.pick")].entries()) {
    const name = pick.closest(".row")?.querySelector(".name");
    name?.removeAttribute("aria-hidden");
    pick.replaceWith(
      el("span", { class: "tray" }, el("span", { class: "typed" }, picks[index] ?? "")),
    );
  }
  for (const label of frame.querySelectorAll("label"))
    label.replaceWith(el("span", { class: "name" }, ...label.childNodes));
}

function textIn(field: Element): string {
  if (field instanceof HTMLSelectElement) return field.selectedOptions[0]?.textContent ?? "";
  if (field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement) return field.value;
  return "";
}

function chosenIn(pick: Element): string {
  return pick.querySelector("input:checked + span")?.textContent ?? "";
}

/** On the page a working is made when it is opened; here nothing could make it. */
function fillWorkings(frame: HTMLElement, context: Context): void {
  const { outline, states } = context.book;
  const ids = new Map([...outline.keys()].map((id) => [slotId(id), id]));
  for (const working of frame.querySelectorAll("details.working")) {
    const slot = working.closest(".cell")?.id;
    const id = slot === undefined ? undefined : ids.get(slot);
    const known = id === undefined ? undefined : outline.get(id);
    if (id === undefined || known === undefined) continue;
    const nodes = workingNodes(known, states.get(id), context);
    if (nodes.length === 0) working.remove();
    else working.querySelector(":scope > div")?.replaceChildren(...nodes);
  }
}

/** Tables of other notebooks that were not opened stand folded all the same. */
function fillUses(frame: HTMLElement, { book }: Context): void {
  for (const fold of frame.querySelectorAll<HTMLElement>("details.fold[data-cell]")) {
    const id = fold.dataset.cell as CellId;
    const holder = fold.querySelector(":scope > div");
    if (!holder || holder.childElementCount > 0) continue;
    if (book.isTable(id)) holder.append(tableOf(id, book));
    else {
      const entry = book.states.get(id)?.entry;
      if (entry) holder.append(el("p", {}, book.text(id, entry.initial)));
      else fold.remove();
    }
  }
}

function tableOf(id: CellId, book: Context["book"]): HTMLElement {
  const { columns, rows } = book.table(id);
  const title = book.title(id);
  const head = columns.map((name) => el("th", { scope: "col", class: "l" }, name));
  const body = rows.map((row) =>
    el("tr", {}, ...row.map((text) => el("td", { class: "l" }, text))),
  );
  return el(
    "div",
    { class: "scroll", role: "group", "aria-label": title, tabindex: 0 },
    el("table", { class: "led" }, el("thead", {}, el("tr", {}, ...head)), el("tbody", {}, ...body)),
  );
}

/** The tally stands beside the page; there is nothing left to fold. */
function openTally(frame: HTMLElement): void {
  for (const box of frame.querySelectorAll(".tallybox"))
    box.replaceWith(el("div", { class: "tallybox" }, ...box.childNodes));
}

/** Buttons that are figures or names of cells stay as words; the others go. */
function buttonsToText(frame: HTMLElement): void {
  for (const one of frame.querySelectorAll("button")) {
    const isFigure = one.classList.contains("fig");
    const isName =
      one.closest(".working, .fromsentence, .waits, .cautions") !== null &&
      !one.matches(".formula");
    if (isFigure || isName)
      one.replaceWith(el("span", { class: isFigure ? "fig" : undefined }, ...one.childNodes));
    else one.remove();
  }
}

/** On the page a link out has its address only while it is pressed; no script does that here. */
function linksOut(frame: HTMLElement): void {
  for (const link of frame.querySelectorAll<HTMLElement>("a[data-address]")) {
    link.setAttribute("href", link.dataset.address ?? "");
    link.removeAttribute("role");
    link.removeAttribute("tabindex");
  }
}

/** Only places in the page itself and secure addresses stay links; names of what is gone, too, go. */
function linksWithin(frame: HTMLElement): void {
  const ids = new Set([...frame.querySelectorAll("[id]")].map(({ id }) => id));
  for (const link of frame.querySelectorAll("a")) {
    const address = link.getAttribute("href") ?? "";
    const isHere = address.startsWith("#") && ids.has(decoded(address.slice(1)));
    if (/^https:\/\//i.test(address)) link.rel = "noreferrer noopener";
    else if (!isHere) link.replaceWith(el("span", {}, ...link.childNodes));
  }
  for (const name of ["aria-labelledby", "aria-describedby"])
    for (const element of frame.querySelectorAll(`[${name}]`)) {
      const there = (element.getAttribute(name) ?? "").split(/\s+/).filter((id) => ids.has(id));
      if (there.length > 0) element.setAttribute(name, there.join(" "));
      else element.removeAttribute(name);
    }
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
