import type { ShownCaution } from "../types/index.ts";
import { el } from "./dom.ts";
import { clothMark } from "./marks.ts";
import { type Sources, sourceNodes } from "./sources.ts";

/** A caution at the entry or result that calls for it. */
export function cautionView(caution: ShownCaution, sources: Sources): HTMLElement {
  const { fact, advice, defersTo, because, sources: ids } = caution;
  return el(
    "div",
    { class: "caution", role: "note" },
    clothMark(),
    el(
      "p",
      {},
      el("b", {}, fact),
      ` ${advice}`,
      defersTo === "" ? undefined : ` ${defersTo}`,
      because ? el("span", { class: "because" }, ` Called for by: ${because}.`) : undefined,
    ),
    ids.length > 0
      ? el("p", { class: "from" }, "Source: ", ...sourceNodes(ids, sources))
      : undefined,
  );
}

/** Cautions with equal names are shown once. */
export function distinct(cautions: readonly ShownCaution[]): readonly ShownCaution[] {
  const seen = new Set<string>();
  return cautions.filter(({ id, because = "" }) => {
    const key = `${id} ${because}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
