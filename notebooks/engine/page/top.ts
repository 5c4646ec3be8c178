import type { Units } from "../types/index.ts";
import { button, el, freshId } from "./dom.ts";
import { houseMark } from "./marks.ts";

export type ViewName = "read" | "write";

export interface TopOptions {
  /** The notebook's title; undefined on the shelf. */
  readonly title: string | undefined;
  readonly units: Units;
  setUnits(units: Units): void;
  setView(view: ViewName): void;
}

/** The head of every page: the house, where you are, units, view, print. */
export function top({ title, units, setUnits, setView }: TopOptions): HTMLElement {
  const house = el("a", { class: "house", href: "./" }, houseMark(), "Bedwright");
  if (title === undefined) return el("header", { class: "top" }, house);
  const where = el(
    "nav",
    { class: "where", "aria-label": "Where you are" },
    el("a", { href: "./" }, "Shelf"),
    " ",
    el("span", { "aria-hidden": "true" }, "/"),
    " ",
    el("span", { "aria-current": "page" }, title),
  );
  const tools = el(
    "div",
    { class: "tools" },
    pick<Units>("Units", units, { us: "ft, in", metric: "metric" }, setUnits),
    pick<ViewName>("View", "read", { read: "Read", write: "Write" }, setView),
    button("Print", () => print()),
  );
  return el("header", { class: "top" }, house, where, tools);
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
