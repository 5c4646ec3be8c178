import type { Context } from "../context.ts";
import { button, el, freshId } from "../dom.ts";

export interface FullViewOptions {
  readonly title: string;
  /** Stands under the title: what the sheet is of. */
  readonly of: string;
  /** Buttons beside the one that goes back. */
  readonly acts: readonly HTMLElement[];
  closed(): void;
}

export interface FullView {
  readonly element: HTMLElement;
  readonly body: HTMLElement;
  /** A line that says what goes on; read out when it changes, unless it is told to be quiet. */
  show(words: string, quiet?: boolean): void;
  /** A line about what was just done, with a way back. */
  note(words: string, undo?: () => void): void;
  close(): void;
}

let open: FullView | undefined;

/**
 * A sheet in place of the notebook's page, so that it has the whole width and prints. Another one
 * takes its place; the notebook's view, chosen anew, ends it.
 */
export function openFullView(context: Context, options: FullViewOptions): FullView {
  open?.close();
  const { root } = context.options;
  const heading = freshId("sheet");
  const body = el("div", { class: "sheetbody" });
  const going = el("p", { class: "going" });
  const said = el("p", { class: "noted" });
  said.hidden = true;
  const element = el(
    "main",
    { class: "plansheet", id: freshId("plans"), "aria-labelledby": heading },
    el(
      "p",
      { class: "acts" },
      button("Back to the notebook", () => view.close(), { class: "main" }),
      ...options.acts,
    ),
    el(
      "div",
      { class: "sheethead" },
      el("h1", { id: heading, tabindex: -1 }, options.title),
      el("p", { class: "of" }, options.of),
    ),
    said,
    going,
    body,
  );
  const before = { view: root.dataset.view ?? "read", focus: document.activeElement };
  let closed = false;
  const watch = new MutationObserver(() => {
    if (root.dataset.view !== "plans") end();
  });
  const end = () => {
    if (closed) return;
    closed = true;
    watch.disconnect();
    element.remove();
    if (open === view) open = undefined;
    options.closed();
    const { focus } = before;
    if (focus instanceof HTMLElement && focus.isConnected) focus.focus();
  };
  const view: FullView = {
    element,
    body,
    show(words, quiet = false) {
      if (going.textContent === words) return;
      going.textContent = words;
      if (!quiet && words !== "") context.say(words);
    },
    note(words, undo) {
      said.hidden = words === "";
      said.replaceChildren(
        words,
        ...(undo === undefined ? [] : [" ", button("Undo", undo, { class: "lnk" })]),
      );
      if (words !== "") context.say(words);
    },
    close() {
      if (!closed && root.dataset.view === "plans") root.dataset.view = before.view;
      end();
    },
  };
  root.dataset.view = "plans";
  watch.observe(root, { attributes: true, attributeFilter: ["data-view"] });
  const frame = root.querySelector(":scope > .frame");
  if (frame) frame.after(element);
  else root.append(element);
  open = view;
  scrollTo(0, 0);
  element.querySelector<HTMLElement>("h1")?.focus();
  return view;
}
