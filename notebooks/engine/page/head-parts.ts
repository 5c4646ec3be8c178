import type { Units } from "../types/index.ts";
import { type Child, el, freshId } from "./dom.ts";
import { houseMark } from "./marks.ts";

/** The head that every page has: the house, which leads to the shelf, and what is the page's own. */
export function houseHead(...own: readonly Child[]): HTMLElement {
  const house = el("a", { class: "house", href: "./" }, houseMark(), "Bedwright");
  return el("header", { class: "top" }, house, ...own);
}

/** The way from the shelf to where the reader is. */
export function whereNav(name: HTMLElement): HTMLElement {
  return el(
    "nav",
    { class: "where", "aria-label": "Where you are" },
    el("a", { href: "./" }, "Shelf"),
    " ",
    el("span", { "aria-hidden": "true" }, "/"),
    " ",
    name,
  );
}

export function unitsPick(units: Units, set: (units: Units) => void): HTMLElement {
  return pick<Units>("Units", units, { us: "ft, in", metric: "metric" }, set);
}

/** One of a few, side by side; a bar stands under the chosen one. */
export function pick<K extends string>(
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
