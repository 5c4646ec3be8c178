import type { CellId, TableText } from "../../types/index.ts";
import { partsOf } from "../book.ts";
import { el } from "../dom.ts";
import type { Difference } from "./differences.ts";

interface ViewParts {
  titleOf(id: CellId): string;
  isOwn(id: CellId): boolean;
  /** The rows a table has in the notebook. */
  given(id: CellId): TableText;
}

/** So many rows of a table that differ are shown. */
const mostRows = 12;

/** What differs, each thing with what it was then and what it is now. */
export function differencesView(all: readonly Difference[], parts: ViewParts): HTMLElement {
  return el("ul", { class: "differs" }, ...all.map((one) => differenceView(one, parts)));
}

function differenceView(one: Difference, parts: ViewParts): HTMLElement {
  const title = titleOf(one, parts);
  const [was, is] = sidesOf(one, parts);
  return el(
    "li",
    {},
    el("p", { class: "what" }, title),
    el(
      "dl",
      {},
      el("div", {}, el("dt", {}, "Then"), el("dd", {}, was)),
      el("div", {}, el("dt", {}, "Now"), el("dd", {}, is)),
    ),
  );
}

function titleOf(one: Difference, { titleOf: of, isOwn }: ViewParts): string {
  if (one.what === "words") return `The words of ${one.file}`;
  const where = isOwn(one.id) ? "" : ` (${partsOf(one.id)[0]})`;
  const what = { entry: "", table: "Table ", formula: "Formula of ", rows: "Given rows of " };
  return `${what[one.what]}${of(one.id)}${where}`;
}

function sidesOf(
  one: Difference,
  { given }: ViewParts,
): readonly [was: HTMLElement, is: HTMLElement] {
  switch (one.what) {
    case "entry":
      return [entryView(one.was), entryView(one.is)];
    case "table":
      return [
        rowsView(one.was, { given: given(one.id), other: one.is }),
        rowsView(one.is, { given: given(one.id), other: one.was }),
      ];
    case "words":
      return [linesView(one.was), linesView(one.is)];
    case "formula":
    case "rows":
      return [codeView(one.was), codeView(one.is)];
  }
}

function entryView(text: string | undefined): HTMLElement {
  if (text === undefined) return quiet("as the notebook has it");
  return text === "" ? quiet("left blank") : el("span", {}, text);
}

function codeView(code: string | undefined): HTMLElement {
  return code === undefined ? quiet("not there") : el("pre", { tabindex: 0 }, code.trimEnd());
}

function linesView(lines: readonly string[]): HTMLElement {
  if (lines.length === 0) return quiet("nothing of it");
  return el("div", {}, ...lines.map((line) => el("p", {}, line)));
}

/** The rows of a table that are not the same in the other. */
function rowsView(
  entered: TableText | undefined,
  { given, other = given }: { given: TableText; other: TableText | undefined },
): HTMLElement {
  const table = entered ?? given;
  const theirs = new Set(other.rows.map((row) => JSON.stringify(row)));
  const rows = table.rows
    .map((row, index) => ({ row, index }))
    .filter(({ row }) => !theirs.has(JSON.stringify(row)));
  const shown = rows.slice(0, mostRows);
  const more = rows.length - shown.length;
  const lines = shown.map(({ row, index }) =>
    el("p", {}, `row ${index + 1}: ${row.filter((field) => field !== "").join(", ") || "blank"}`),
  );
  const all = `${table.rows.length} ${table.rows.length === 1 ? "row" : "rows"} in all`;
  const count = entered === undefined ? `${all}, as the notebook has it` : all;
  if (more > 0) lines.push(el("p", {}, `and ${more} more rows that differ`));
  return el("div", {}, ...lines, el("p", { class: "quiet" }, count));
}

const quiet = (words: string) => el("span", { class: "quiet" }, words);
