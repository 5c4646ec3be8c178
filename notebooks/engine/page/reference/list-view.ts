import type { Reference, ReferenceName } from "../../types/index.ts";
import { el } from "../dom.ts";
import { coded } from "./fields-table.ts";
import type { Linker } from "./linker.ts";
import { breakable } from "./name-view.ts";

export interface ListOptions {
  readonly reference: Reference;
  readonly linker: Linker;
  readonly level: 2 | 3;
  /** In one list as they were found, each with its group; else by groups. */
  readonly isFlat?: boolean;
}

/** Names with the first sentence of what is said of them. */
export function listView(names: readonly ReferenceName[], options: ListOptions): HTMLElement {
  const { reference, linker, level, isFlat = false } = options;
  if (isFlat) return list(names, linker);
  const groups = reference.groups.flatMap(({ name, title }) => {
    const own = names.filter(({ group }) => group === name);
    if (own.length === 0) return [];
    const records = own.filter(({ what }) => what === "type");
    // What one calls comes before what one only names.
    const called = own.filter(({ what }) => what !== "type" && what !== "constant");
    const rest = [...called, ...own.filter(({ what }) => what === "constant")];
    const folded = el(
      "details",
      { class: "fold" },
      el(
        "summary",
        {},
        el("b", {}, `Records: ${records.length}`),
        el("span", { class: "vh" }, ` of ${title}`),
      ),
      list(records, linker),
    );
    return [
      el(`h${level}`, {}, linker.link({ part: name }, title)),
      list(rest, linker),
      ...(records.length > 0 ? [folded] : []),
    ];
  });
  const parts = reference.groups.map(({ name, title }) =>
    el("li", {}, linker.link({ part: name }, title)),
  );
  const all = el(
    "nav",
    { "aria-label": "Parts of the reference" },
    el("ol", { class: "refparts" }, ...parts),
  );
  return el("div", { class: "groups" }, all, ...groups);
}

function list(names: readonly ReferenceName[], linker: Linker): HTMLElement {
  return el(
    "ul",
    { class: "namelist" },
    ...names.map((name) =>
      el(
        "li",
        {},
        linker.link({ name: name.name }, el("code", {}, ...breakable(name.name))),
        el("span", {}, ...coded(firstSentence(name.summary))),
      ),
    ),
  );
}

function firstSentence(text: string): string {
  const [line = ""] = text.split("\n\n");
  const [sentence = line] = /^.*?[.;](?=\s[A-Z“]|$)/.exec(line) ?? [];
  return sentence;
}
