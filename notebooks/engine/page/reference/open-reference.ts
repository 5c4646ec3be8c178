import { keepUnits, loadUnits } from "../../store/index.ts";
import type { Units } from "../../types/index.ts";
import { button, el } from "../dom.ts";
import type { PageOptions } from "../options.ts";
import { top } from "../top.ts";
import { addressOf, type Place, placeOf } from "./place.ts";
import { ReferenceView } from "./reference-view.ts";
import { unitsPick } from "./units-pick.ts";

/** Draws the reference as a page of its own: at one name, or where the address says. */
export async function openReference(name: string | undefined, options: PageOptions): Promise<void> {
  const { root, storage } = options;
  const units: Units = (await loadUnits(storage)) ?? "us";
  const view = new ReferenceView(options, {
    units,
    level: 2,
    went(place, how) {
      document.title = `${titleOf(place)} · Bedwright`;
      const address = addressOf(place);
      if (how === "typed") history.replaceState(null, "", address);
      else if (address !== (location.search || "?")) history.pushState(null, "", address);
    },
  });
  addEventListener("popstate", () => view.show(placeOf(location.search), "back"));
  const { element: head } = top({
    title: undefined,
    units,
    setUnits: () => undefined,
    setView: () => undefined,
  });
  const where = el(
    "nav",
    { class: "where", "aria-label": "Where you are" },
    el("a", { href: "./" }, "Shelf"),
    " ",
    el("span", { "aria-hidden": "true" }, "/"),
    " ",
    el("span", {}, "Reference"),
  );
  const tools = el(
    "div",
    { class: "tools" },
    unitsPick(units, (chosen) => {
      void keepUnits(storage, chosen);
      view.setUnits(chosen);
    }),
    button("Print", () => print()),
  );
  head.append(where, tools);
  root.dataset.view = "reference";
  root.replaceChildren(
    el("a", { class: "skip", href: "#page" }, "Skip to the page"),
    head,
    el(
      "main",
      { id: "page", class: "refpage", tabindex: -1 },
      el("h1", {}, "Every calculation, explained"),
      view.element,
    ),
  );
  const place = placeOf(location.search);
  view.show(name === undefined || name === "" ? place : { name }, "opened");
}

function titleOf({ name, part, find }: Place): string {
  return name ?? part ?? (find === undefined ? "Reference" : `“${find}” in the reference`);
}
