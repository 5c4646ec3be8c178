import type { Reference, ReferenceName } from "../../types/index.ts";
import { el } from "../dom.ts";
import { type Sources, sourceNodes } from "../sources.ts";
import { isLong } from "./example-notebook.ts";
import { exampleView } from "./example-view.ts";
import { coded, fieldsTable, parametersTable } from "./fields-table.ts";
import type { Linker } from "./linker.ts";
import type { LiveExamples } from "./live-examples.ts";
import { signatureLines } from "./signature.ts";

export interface NameOptions {
  readonly reference: Reference;
  readonly sources: Sources;
  readonly live: LiveExamples;
  readonly linker: Linker;
  /** The level of its heading; the parts under it are one lower. */
  readonly level: 2 | 3;
}

/** All that is said of one name: how it is written, what it takes and gives, its rule, an example. */
export function nameView(name: ReferenceName, options: NameOptions): HTMLElement {
  const { linker, sources, level, reference } = options;
  const { summary, rule, parameters, returns, throws } = name;
  const [first = "", ...more] = summary.split("\n\n");
  const group = reference.groups.find((one) => one.name === name.group);
  const what = el(
    "p",
    { class: "kind" },
    `${kinds[name.what]} · `,
    linker.link({ part: name.group }, group?.title ?? name.group),
  );
  return el(
    "article",
    { class: "named", "data-name": name.name },
    el(`h${level}`, { tabindex: -1 }, el("code", {}, ...breakable(name.name))),
    what,
    el("p", { class: "say" }, ...coded(first)),
    ...more.map((text) => el("p", { class: "onward" }, ...coded(text))),
    signature(name, linker),
    ...examples(name, options),
    ...(parameters.length > 0 ? [parametersTable(parameters, linker)] : []),
    ...gives(name, linker),
    ...part("Rule", rule === undefined ? [] : [rule]),
    ...part("Source", name.sources.length === 0 ? [] : sourceNodes(name.sources, sources)),
    ...part("Refuses", throws.length === 0 ? [] : throws.map((text) => refusal(text))),
    ...part("Gives", returns?.help === undefined ? [] : coded(returns.help)),
  );
}

const kinds: Readonly<Record<ReferenceName["what"], string>> = {
  function: "Function",
  constant: "Constant",
  type: "Record",
  entry: "Entry",
  table: "Published table",
  package: "Package",
};

/** A long name may be broken where its words meet. */
export function breakable(name: string): (Node | string)[] {
  return name
    .split(/(?<=[a-z.])(?=[A-Z]|(?<=\.)\w)/)
    .flatMap((part, at) => (at === 0 ? [part] : [el("wbr"), part]));
}

function signature({ signature: text, name, what }: ReferenceName, linker: Linker): Node {
  // A table's name says all; what kind of thing a record is, its fields do.
  if (what === "table" || what === "type" || what === "package")
    return el("span", { hidden: true });
  const lines = signatureLines(text).flatMap((line, at) => [
    ...(at === 0 ? [] : ["\n"]),
    ...linker.linked(line, name),
  ]);
  return el("pre", { class: "sig", "aria-label": "How it is written" }, ...lines);
}

function gives({ returns, fields = [], what }: ReferenceName, linker: Linker): HTMLElement[] {
  if (fields.length > 0)
    return [fieldsTable(what === "table" ? "Its columns" : "Its fields", fields, linker)];
  if (!returns?.fields || what === "entry") return [];
  // Long records are folded: one looks up a field, one does not read them all.
  const table = fieldsTable("What it gives", returns.fields, linker);
  if (returns.fields.length <= 5) return [table];
  const summary = el("summary", {}, el("b", {}, `What it gives: ${returns.fields.length} fields`));
  return [el("details", { class: "fold" }, summary, table)];
}

function part(term: string, inside: readonly (Node | string)[]): HTMLElement[] {
  if (inside.length === 0) return [];
  return [el("dl", { class: "part" }, el("dt", {}, term), el("dd", {}, ...inside))];
}

/** A refusal begins with the kind of error, which tells a reader nothing. */
function refusal(text: string): HTMLElement {
  const words = text.replace(/^(ProblemError|Error|TypeError|RangeError)\s+/, "").trim();
  return el("div", {}, ...coded(words.charAt(0).toUpperCase() + words.slice(1)));
}

function examples(name: ReferenceName, { live, sources, reference }: NameOptions): HTMLElement[] {
  return name.examples
    .filter((steps) => steps.length > 0)
    .map((steps) =>
      exampleView(steps, {
        live,
        sources,
        onAsking: isLong(steps, reference.names),
        label: `Example of ${name.name}`,
      }),
    );
}
