import type { Units } from "../types/index.ts";
import type { Act } from "./act.ts";
import { button, el } from "./dom.ts";
import { houseHead, pick, unitsPick, whereNav } from "./head-parts.ts";

export type ViewName = "read" | "write" | "room";

export interface TopOptions {
  /** The notebook's title. */
  readonly title: string;
  readonly units: Units;
  setUnits(units: Units): void;
  setView(view: ViewName): void;
  /** What can be done with the notebook. */
  readonly acts: readonly Act[];
}

/** The head of a page. */
export interface Head {
  readonly element: HTMLElement;
  /** Shows another title of the notebook. */
  show(title: string): void;
  /** Marks a view as the chosen one. */
  choose(view: ViewName): void;
}

/** The head of an open notebook: the house, where you are, units, view, print, what can be done. */
export function top({ title, units, setUnits, setView, acts }: TopOptions): Head {
  const name = el("span", { "aria-current": "page" }, title);
  const views = pick<ViewName>(
    "View",
    "read",
    { read: "Read", write: "Write", room: "Room" },
    setView,
  );
  const tools = el(
    "div",
    { class: "tools" },
    unitsPick(units, setUnits),
    views,
    button("Print", () => print()),
    menu(acts),
  );
  return {
    element: houseHead(whereNav(name), tools),
    show(other) {
      name.textContent = other;
    },
    choose(view) {
      for (const input of views.querySelectorAll("input")) input.checked = input.value === view;
    },
  };
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
