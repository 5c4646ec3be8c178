import { keepUnits, loadUnits } from "../../store/index.ts";
import type { Units } from "../../types/index.ts";
import { button, el } from "../dom.ts";
import { houseHead, unitsPick, whereNav } from "../head-parts.ts";
import type { PageOptions } from "../options.ts";
import { addressOf, type Place, placeOf } from "./place.ts";
import { ReferenceView } from "./reference-view.ts";

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
  const tools = el(
    "div",
    { class: "tools" },
    unitsPick(units, (chosen) => {
      void keepUnits(storage, chosen);
      view.setUnits(chosen);
    }),
    button("Print", () => print()),
  );
  root.dataset.view = "reference";
  root.replaceChildren(
    el("a", { class: "skip", href: "#page" }, "Skip to the page"),
    houseHead(whereNav(el("span", { "aria-current": "page" }, "Reference")), tools),
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
