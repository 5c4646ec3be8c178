import type { Units } from "../types/index.ts";
import type { Act } from "./act.ts";
import { button, el, freshId } from "./dom.ts";
import { houseMark } from "./marks.ts";

export type ViewName = "read" | "write" | "room";

export interface TopOptions {
  /** The notebook's title; undefined on the shelf. */
  readonly title: string | undefined;
  readonly units: Units;
  setUnits(units: Units): void;
  setView(view: ViewName): void;
  /** What can be done with the notebook. */
  readonly acts?: readonly Act[];
}

/** The head of a page. */
export interface Head {
  readonly element: HTMLElement;
  /** Shows another title of the notebook. */
  show(title: string): void;
  /** Marks a view as the chosen one. */
  choose(view: ViewName): void;
}

/** The head of every page: the house, where you are, units, view, print. */
export function top({ title, units, setUnits, setView, acts = [] }: TopOptions): Head {
  const house = el("a", { class: "house", href: "./" }, houseMark(), "Bedwright");
  const name = el("span", { "aria-current": "page" }, title);
  const views = pick<ViewName>(
    "View",
    "read",
    { read: "Read", write: "Write", room: "Room" },
    setView,
  );
  const head = {
    show: (other: string) => {
      name.textContent = other;
    },
    choose: (view: ViewName) => {
      for (const input of views.querySelectorAll("input")) input.checked = input.value === view;
    },
  };
  if (title === undefined) return { ...head, element: el("header", { class: "top" }, house) };
  const where = el(
    "nav",
    { class: "where", "aria-label": "Where you are" },
    el("a", { href: "./" }, "Shelf"),
    " ",
    el("span", { "aria-hidden": "true" }, "/"),
    " ",
    name,
  );
  const tools = el(
    "div",
    { class: "tools" },
    pick<Units>("Units", units, { us: "ft, in", metric: "metric" }, setUnits),
    views,
    button("Print", () => print()),
    menu(acts),
  );
  return { ...head, element: el("header", { class: "top" }, house, where, tools) };
}

function pick<K extends string>(
  legend: string,
  chosen: K,
  choices: Readonly<Record<K, string>>,
  set: (key: K) => void,
): HTMLElement {
  const name = freshId("pick");
  const labels = (Object.entries(choices) as [K, string][]).map(([key, words]) => {
    const input = el("input", { type: "radio", name, value: key, checked: key === chosen });
    input.addEventListener("change", () => set(key));
    return el("label", {}, input, el("span", {}, words));
  });
  return el("fieldset", { class: "pick" }, el("legend", {}, legend), ...labels);
}

/** The notebook's acts, folded under one word. They are listed anew at each opening. */
function menu(acts: readonly Act[]): HTMLElement {
  const list = el("ul");
  const summary = el("summary", {}, "This notebook");
  const box = el("details", { class: "acts" }, summary, list);
  const close = () => {
    box.open = false;
  };
  /** What an act opens gives focus back to where it was, which must be something that is seen. */
  const leave = () => {
    close();
    summary.focus();
  };
  box.addEventListener("toggle", () => {
    if (!box.open) return;
    const shown = acts.filter((act) => act.shown?.() ?? true);
    list.replaceChildren(...shown.map((act) => el("li", {}, ...line(act, leave))));
  });
  box.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape" || !box.open) return;
    leave();
  });
  box.addEventListener("focusout", ({ relatedTarget }) => {
    if (relatedTarget instanceof Node && !box.contains(relatedTarget)) close();
  });
  addEventListener("pointerdown", ({ target }) => {
    if (target instanceof Node && !box.contains(target)) close();
  });
  return box;
}

function line({ words, hint, run }: Act, close: () => void): HTMLElement[] {
  const act = button(words, () => {
    close();
    run();
  });
  return hint === undefined ? [act] : [act, el("small", {}, hint)];
}
