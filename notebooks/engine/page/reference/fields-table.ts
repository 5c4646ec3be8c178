import type { ReferenceField, ReferenceParameter } from "../../types/index.ts";
import { el } from "../dom.ts";
import type { Linker } from "./linker.ts";

/** What a function is handed, with the fields of each record under it. */
export function parametersTable(
  parameters: readonly ReferenceParameter[],
  linker: Linker,
): HTMLElement {
  const rows = parameters.flatMap((parameter) => [
    row(parameter, linker),
    ...(parameter.fields ?? []).map((field) => row(field, linker, parameter.name)),
  ]);
  return table("What it takes", rows);
}

/** The fields of a record, the columns of a table. */
export function fieldsTable(
  title: string,
  fields: readonly ReferenceField[],
  linker: Linker,
): HTMLElement {
  return table(
    title,
    fields.map((field) => row(field, linker)),
  );
}

function table(title: string, rows: readonly HTMLElement[]): HTMLElement {
  return el(
    "table",
    { class: "led fields" },
    el("caption", {}, title),
    el("thead", { class: "vh" }, el("tr", {}, el("th", {}, "Name"), el("th", {}, "What it is"))),
    el("tbody", {}, ...rows),
  );
}

function row(
  { name, type, help, optional }: ReferenceField,
  linker: Linker,
  of?: string,
): HTMLElement {
  const may = optional ? el("span", { class: "may" }, "may be left out") : undefined;
  const owner = of === undefined ? undefined : el("span", { class: "of" }, `${of}.`);
  return el(
    "tr",
    { class: of === undefined ? undefined : "inner" },
    el("th", { scope: "row", class: "l" }, el("code", {}, owner, name)),
    el(
      "td",
      { class: "l" },
      ...(help === undefined ? [] : [el("span", { class: "help" }, ...coded(help)), " "]),
      el("code", { class: "type" }, ...linker.linked(type)),
      ...(may ? [" ", may] : []),
    ),
  );
}

/** A text of a doc comment, its pieces of code set as such. */
export function coded(text: string): (Node | string)[] {
  return text.split(/`([^`]+)`/).map((part, at) => (at % 2 === 1 ? el("code", {}, part) : part));
}
