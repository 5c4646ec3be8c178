import { canHaveRange, type Effect, type OwnRange, type Varied } from "../../plans/index.ts";
import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { el } from "../dom.ts";
import { figureNodes } from "../figure-text.ts";
import { wordsOf } from "./differences-table.ts";
import { keyOf, type MattersState, type Tried } from "./matters-run.ts";

export interface MattersTableOptions {
  readonly context: Context;
  readonly state: MattersState;
  title(id: CellId): string;
  effect(id: CellId): Effect | undefined;
  /** The reader wrote another bound; undefined is the usual one again. */
  bound(id: CellId, range: OwnRange): void;
}

/** One row an entry: what it is varied between, and what the answer is then. */
export function mattersTable(
  rows: readonly Varied[],
  caption: string,
  options: MattersTableOptions,
): HTMLElement {
  const heads = ["Entry", "Now", "Low", "High", "The answer goes"];
  const table = el(
    "table",
    { class: "led planled rangeled" },
    el("caption", {}, caption),
    el(
      "thead",
      {},
      el("tr", {}, ...heads.map((words) => el("th", { scope: "col", class: "l" }, words))),
    ),
    el("tbody", {}, ...rows.map((varied) => rowOf(varied, options))),
  );
  return el("div", { class: "scroll", role: "group", "aria-label": caption, tabindex: 0 }, table);
}

function rowOf(varied: Varied, options: MattersTableOptions): HTMLElement {
  const { context, effect, title: titleOf } = options;
  const { id, entry, variation } = varied;
  const title = titleOf(id);
  const isRange = variation.by === "range" || canHaveRange(variation, entry);
  const middle = isRange
    ? (["low", "high"] as const).map((end) => boundCell(varied, end, options))
    : [el("td", { class: "l", colspan: 2 }, ...optionParts(varied, options))];
  return el(
    "tr",
    {},
    el("th", { scope: "row", class: "l" }, el("span", { class: "name" }, title)),
    el("td", { class: "l", "data-head": "Now" }, ...figureNodes(wordsOf(context, id, entry.text))),
    ...middle,
    el("td", { class: "l goes" }, ...goes(effect(id), varied)),
  );
}

function goes(effect: Effect | undefined, { variation }: Varied): (Node | string)[] {
  if (variation.by === "none" && effect === undefined)
    return [el("span", { class: "none" }, `not varied: ${variation.why}`)];
  if (effect === undefined) return [el("span", { class: "none" }, "…")];
  if (effect.size === 0) return ["nowhere"];
  const { low, high } = effect;
  return [
    "from ",
    el("span", { class: "n" }, ...figureNodes(low.figure.text)),
    " to ",
    el("span", { class: "n" }, ...figureNodes(high.figure.text)),
    ...(low.cutShort || high.cutShort
      ? [el("small", {}, "not searched to the end: the best found in 10 s")]
      : []),
  ];
}

/** A tray with the bound, and under it what the answer is there. */
function boundCell(varied: Varied, end: "low" | "high", options: MattersTableOptions): HTMLElement {
  const { id, variation } = varied;
  const { state, title, bound } = options;
  const trial = varied.trials.find((one) => one.end === end);
  const tried = trial && state.tried.get(keyOf(trial));
  const known = variation.by === "range" ? variation[end][0] : undefined;
  // A usual bound that the entry does not take is none: it is at its limit already.
  const isWrong = tried?.is === "refused" && trial?.own === true;
  const text = tried?.is === "refused" && !isWrong ? "" : (tried?.text ?? known ?? "");
  const field = el("input", {
    type: "text",
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": `${title(id)}, ${end}`,
    "aria-invalid": isWrong ? "true" : undefined,
    "data-key": `${end} ${id}`,
  });
  field.value = text;
  field.size = Math.max(5, text.length);
  field.addEventListener("change", () => {
    const { value } = field;
    bound(id, { [end]: value.trim() === "" ? undefined : value.trim() } as OwnRange);
  });
  const tray = el("span", { class: isWrong ? "tray wrong" : "tray" }, field);
  return el(
    "td",
    { class: "l", "data-head": end === "low" ? "Low" : "High" },
    tray,
    ...underBound(tried, isWrong ? undefined : end),
  );
}

function underBound(tried: Tried | undefined, limit: "low" | "high" | undefined): HTMLElement[] {
  if (tried === undefined) return [];
  if (tried.is === "refused" && limit !== undefined)
    return [el("small", {}, limit === "low" ? "goes no lower" : "goes no higher")];
  if (tried.is !== "answer") return [el("small", { class: "refused" }, tried.why)];
  return [el("small", {}, ...answerNodes(tried))];
}

function answerNodes(tried: Tried | undefined): (Node | string)[] {
  if (tried === undefined) return ["…"];
  if (tried.is !== "answer") return [tried.why];
  const { answer } = tried;
  return answer.is === "figure" ? figureNodes(answer.figure.text) : ["no answer then"];
}

function optionParts(varied: Varied, { state }: MattersTableOptions): (Node | string)[] {
  if (varied.trials.length === 0) return ["–"];
  return varied.trials.map((trial) =>
    el("small", {}, `${trial.label ?? ""}: `, ...answerNodes(state.tried.get(keyOf(trial)))),
  );
}
