import type { CellError, CellId, OutlineCell } from "../types/index.ts";
import { partsOf } from "./book.ts";
import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";
import { slipView } from "./slip.ts";

/** A cell that has no value: what is wrong, at which line, what to do, who waits for it. */
export function errorView(
  error: CellError,
  outline: OutlineCell | undefined,
  id: CellId,
  context: Context,
): HTMLElement {
  const { book } = context;
  const title = book.title(id);
  if (error.kind === "waits")
    return el(
      "p",
      { class: "waits" },
      el("b", {}, title),
      ` ${error.message.charAt(0).toLowerCase()}${error.message.slice(1)}`,
    );
  const elsewhere = isElsewhere(error, outline);
  const said =
    error.kind === "stopped" ? stoppedWords(title) : brokenWords(error, title, elsewhere);
  const slip = el("div");
  const open = button("Open the cell", () => {
    // In the writing view a cell of one's own opens to be mended.
    const isWritten = context.options.root.dataset.view === "write";
    const name = open.closest(".cell")?.querySelector<HTMLElement>(":scope > .cellname");
    if (isWritten && name && context.editing.mayEdit(partsOf(id)[0])) return name.click();
    const shown = slip.childNodes.length > 0;
    slip.replaceChildren(...(shown || !outline ? [] : [slipView(outline, context)]));
    open.textContent = shown ? "Open the cell" : "Fold the cell away";
  });
  const again =
    error.kind === "stopped" && button("Try it again", () => void context.driver.tryAgain(id));
  return el(
    "div",
    { class: "broken" },
    ...said,
    elsewhere ? undefined : formulaLine(error, outline, context),
    el("p", { class: "foot" }, again, outline && open, el("span", {}, whoWaits(outline, context))),
    slip,
  );
}

function stoppedWords(title: string): HTMLElement[] {
  return [
    el("p", {}, el("b", {}, `${title} was stopped.`), " It ran without coming to an end."),
    el(
      "p",
      {},
      "Everything you entered is as it was. Put back what you changed last, then try it again.",
    ),
  ];
}

/**
 * Whether what is wrong stands somewhere else than in the formula: in a field of a table or an
 * entry. Problems of the formula's own arithmetic have no place of their own, or name the cell.
 */
function isElsewhere({ kind, problems }: CellError, outline: OutlineCell | undefined): boolean {
  return (
    kind === "problems" &&
    !problems.every(({ path: [at] }) => at === undefined || at === outline?.name)
  );
}

function brokenWords(
  { message, line, file }: CellError,
  title: string,
  elsewhere: boolean,
): HTMLElement[] {
  const where = elsewhere || line === 0 ? "" : ` Line ${line} of ${file}:`;
  const [first = "", ...more] = message.split("\n");
  return [
    el("p", {}, el("b", {}, `${title} can’t be worked out.`), where),
    el("p", {}, first),
    ...more.map((text) => el("p", {}, text)),
  ];
}

/** The line of the formula that is meant, with the names concerned under a wavy line. */
function formulaLine(
  { kind, line, names }: CellError,
  outline: OutlineCell | undefined,
  { book }: Context,
): HTMLElement | undefined {
  if (kind === "stopped" || !outline) return undefined;
  const block = book.block(outline.id);
  if (block?.kind !== "cell") return undefined;
  const text = block.formula.split("\n")[line - block.formulaLine];
  if (text === undefined || text.trim() === "" || text.length > 200) return undefined;
  const marked = new Set(names);
  const parts = text.trim().split(/([\p{L}_$][\p{L}\p{N}_$]*)/u);
  return el(
    "p",
    { class: "code" },
    ...parts.map((part) => (marked.has(part) ? el("u", {}, part) : part)),
  );
}

function whoWaits(outline: OutlineCell | undefined, { book }: Context): string {
  const waiting = (outline?.gives ?? []).filter(
    (id) => book.states.get(id)?.error?.kind === "waits",
  );
  if (waiting.length === 0) return "The rest goes on.";
  const names = waiting.map((id) => book.title(id)).join(", ");
  const many = waiting.length === 1 ? "1 cell waits" : `${waiting.length} cells wait`;
  return `${many} for it: ${names}. The rest goes on.`;
}
