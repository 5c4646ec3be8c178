import type { Units } from "../../types/index.ts";
import { el, freshId } from "../dom.ts";

/** Which units results are printed in. */
export function unitsPick(chosen: Units, choose: (units: Units) => void): HTMLElement {
  const name = freshId("units");
  const words = { us: "ft, in", metric: "metric" } as const;
  const labels = (["us", "metric"] as const).map((units) => {
    const input = el("input", { type: "radio", name, value: units, checked: units === chosen });
    input.addEventListener("change", () => choose(units));
    return el("label", {}, input, el("span", {}, words[units]));
  });
  return el("fieldset", { class: "pick" }, el("legend", {}, "Units"), ...labels);
}
