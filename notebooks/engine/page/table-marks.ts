import type { PlacedProblem } from "./context.ts";
import { el, freshId, setAttribute } from "./dom.ts";
import { splitMark } from "./marks.ts";
import { headingWords, placeOf } from "./table-rows.ts";

/** Marks the fields that are refused, and says why under their row. Only marks are touched, never a field. */
export function markRows(
  body: HTMLElement,
  columns: readonly string[],
  all: readonly PlacedProblem[],
): void {
  for (const old of body.querySelectorAll("tr.why")) old.remove();
  const byRow = grouped(all);
  for (const line of body.querySelectorAll<HTMLElement>("tr[data-row]")) {
    const index = Number(line.dataset.row);
    const problems = byRow.get(index + 1) ?? [];
    const why = problems.length > 0 ? whyRow(problems, index, columns) : undefined;
    line.classList.toggle("bad", why !== undefined);
    const places = new Set(problems.map(({ column }) => placeOf(columns, column)));
    for (const field of line.querySelectorAll("input")) {
      const wrong = places.has(Number(field.dataset.column));
      setAttribute(field, "aria-invalid", wrong && "true");
      setAttribute(field, "aria-describedby", wrong && why?.id);
      field.parentElement?.classList.toggle("wrong", wrong);
    }
    if (why) line.after(why.line);
  }
}

function whyRow(problems: readonly PlacedProblem[], index: number, columns: readonly string[]) {
  const id = freshId("why");
  const sentences = problems.map(({ column, sentence }) => {
    const place = column ? `, ${headingWords(column).toLowerCase()}` : "";
    return el("span", {}, el("b", {}, `Row ${index + 1}${place}: `), withoutPlace(sentence), " ");
  });
  const words = el("p", { id }, splitMark(), el("span", {}, ...sentences));
  const stays = el("span", {}, "The row is left out until then; what you typed stays.");
  words.lastElementChild?.append(stays);
  return {
    id,
    line: el("tr", { class: "why" }, el("td", { colspan: columns.length }, words)),
  };
}

function grouped(problems: readonly PlacedProblem[]): Map<number | undefined, PlacedProblem[]> {
  const groups = new Map<number | undefined, PlacedProblem[]>();
  for (const problem of problems)
    groups.set(problem.row, [...(groups.get(problem.row) ?? []), problem]);
  return groups;
}

/** The sentence begins with its place, which stands before it here in bold. */
function withoutPlace(sentence: string): string {
  const at = /^[^:“”]*, row \d+[^:“”]*: /.exec(sentence);
  const rest = at ? sentence.slice(at[0].length) : sentence;
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
