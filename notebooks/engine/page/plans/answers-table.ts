import { type Answer, differs, lowest } from "../../plans/index.ts";
import type { CellId } from "../../types/index.ts";
import { button, el } from "../dom.ts";
import { figureNodes } from "../figure-text.ts";
import type { Column } from "./columns.ts";

export interface AnswersTableOptions {
  readonly columns: readonly Column[];
  readonly rows: readonly CellId[];
  /** Rows that are alike in all columns are left out. */
  readonly onlyDiffering: boolean;
  /** Rows the reader added, and may take away. */
  readonly added: ReadonlySet<CellId>;
  title(id: CellId): string;
  head(column: Column): readonly HTMLElement[];
  takeAway(id: CellId): void;
}

/** The plans as columns, their answers as rows. */
export function answersTable(options: AnswersTableOptions): HTMLElement[] {
  const { columns, rows, onlyDiffering } = options;
  const all = rows.map((id) => ({ id, answers: columns.map(({ answers }) => answers.get(id)) }));
  const differing = all.filter(({ answers }) => differs(answers));
  const shown = onlyDiffering
    ? differing
    : [...differing, ...all.filter((row) => !differing.includes(row))];
  const left = all.length - shown.length;
  // What a column can't be worked out for is said at its first row.
  const said = new Set<string>();
  const head = columns.map((column) =>
    el("th", { scope: "col", class: column.plan ? undefined : "inuse" }, ...options.head(column)),
  );
  const table = el(
    "table",
    { class: "led planled" },
    el("caption", {}, "What each comes to"),
    el("thead", {}, el("tr", {}, el("th", { scope: "col", class: "l" }, "Answer"), ...head)),
    el("tbody", {}, ...shown.map((row) => rowOf(row, options, said))),
  );
  const region = {
    class: "scroll",
    role: "group",
    "aria-label": "Plans side by side",
    tabindex: 0,
  };
  return [el("div", region, table), el("p", { class: "foot-note" }, leftWords(left, shown.length))];
}

function leftWords(left: number, shown: number): string {
  if (left === 0) return "";
  if (shown === 0) return "All answers are the same in these columns.";
  return left === 1
    ? "One answer is the same in all of them."
    : `${left} answers are the same in all of them.`;
}

interface Row {
  readonly id: CellId;
  readonly answers: readonly (Answer | undefined)[];
}

function rowOf(
  { id, answers }: Row,
  { columns, added, title, takeAway }: AnswersTableOptions,
  said: Set<string>,
) {
  const least = lowest(answers);
  const name = title(id);
  const away =
    added.has(id) &&
    button("Leave out", () => takeAway(id), { class: "lnk", "aria-label": `Leave out ${name}` });
  return el(
    "tr",
    { class: differs(answers) ? undefined : "alike" },
    el("th", { scope: "row", class: "l" }, el("span", { class: "name" }, name), away),
    ...answers.map((answer, at) =>
      cellOf(answer, columns[at], { isLeast: least.has(at), isNew: isNew(answer, `${at}`, said) }),
    ),
  );
}

interface How {
  readonly isLeast: boolean;
  /** What is wrong has not been said in this column. */
  readonly isNew: boolean;
}

function isNew(answer: Answer | undefined, column: string, said: Set<string>): boolean {
  if (answer?.is !== "error") return false;
  const key = `${column} ${answer.message}`;
  const before = said.has(key);
  said.add(key);
  return !before;
}

function cellOf(answer: Answer | undefined, column: Column | undefined, how: How) {
  const isStale = column !== undefined && column.is !== "done";
  const classes = [column?.plan ? "" : "inuse", how.isLeast ? "least" : "", isStale ? "stale" : ""];
  return el(
    "td",
    { class: classes.join(" ").trim() || undefined },
    ...contentOf(answer, column, how),
  );
}

function contentOf(
  answer: Answer | undefined,
  column: Column | undefined,
  { isLeast, isNew }: How,
): (Node | string)[] {
  if (answer === undefined) {
    const words = column?.is === "done" ? "no figure" : column?.is === "failed" ? "not known" : "…";
    return [el("span", { class: "none" }, words)];
  }
  if (answer.is === "error") {
    const why = answer.message.length > 140 ? `${answer.message.slice(0, 139)}…` : answer.message;
    return [
      el("span", { class: "none" }, "can’t be worked out"),
      ...(isNew ? [el("small", {}, why)] : []),
    ];
  }
  const { number, unit, second } = answer.figure;
  return [
    el("span", { class: "n" }, ...figureNodes(number)),
    ...(unit === "" ? [] : [" ", el("span", { class: "unit" }, unit)]),
    ...(second === undefined ? [] : [el("small", {}, ...figureNodes(second))]),
    ...(isLeast ? [el("small", { class: "leastword" }, "least")] : []),
    ...(answer.cutShort ? [el("small", {}, "the best found so far")] : []),
  ];
}
