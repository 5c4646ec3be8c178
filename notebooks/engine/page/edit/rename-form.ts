import type { CellId } from "../../types/index.ts";
import { idOf, partsOf } from "../book.ts";
import type { Context } from "../context.ts";
import { button, el, freshId } from "../dom.ts";
import { plansFollowRename } from "../plans/follow-rename.ts";
import { openCell } from "./open-cell.ts";

export interface RenameForm {
  readonly element: HTMLElement;
  toggle(): void;
  /** Told when it comes and goes. */
  shown?: (isShown: boolean) => void;
}

/** Asks for another name and gives it to the cell, to every formula that takes it and every sentence. */
export function renameForm(id: CellId, context: Context): RenameForm {
  const [file, name] = partsOf(id);
  const fieldId = freshId("name");
  const input = el("input", {
    id: fieldId,
    type: "text",
    value: name,
    maxlength: 80,
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
  });
  const uses = el("p", { class: "hint" });
  const wrong = el("p", { class: "refused", role: "alert", hidden: true });
  const form = el(
    "form",
    { class: "rename", hidden: true },
    el("label", { for: fieldId }, "Another name for it"),
    el("span", { class: "tray" }, input),
    el("button", { type: "submit" }, "Rename it everywhere"),
    button("Leave it", () => made.toggle(), { class: "lnk" }),
    uses,
    wrong,
  );
  const made: RenameForm = {
    element: form,
    toggle() {
      form.hidden = !form.hidden;
      made.shown?.(!form.hidden);
      if (form.hidden) return;
      uses.textContent = usesInWords(id, context);
      wrong.hidden = true;
      input.focus();
      input.select();
    },
  };
  form.addEventListener("keydown", ({ key }) => {
    if (key === "Escape") made.toggle();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const told = (why: string | undefined) => {
      wrong.textContent = why ?? "";
      wrong.hidden = why === undefined;
    };
    rename(file, { from: name, to: input.value.trim() }, context).then(told, () =>
      told(notFetched),
    );
  });
  return made;
}

/** What reads formulas for their names comes when it is first needed. */
const notFetched = "What this takes could not be fetched. Try again when you are online.";

function usesInWords(id: CellId, { book }: Context): string {
  const [file, name] = partsOf(id);
  const formulas = book.outline.get(id)?.gives.length ?? 0;
  const sentences = [...book.documents.values()]
    .flatMap((one) => (one.file === file ? one.blocks : []))
    .flatMap((block) => (block.kind === "prose" ? block.figures : []))
    .filter((figure) => figure.name === name).length;
  const count = (number: number, what: string) => `${number} ${what}${number === 1 ? "" : "s"}`;
  if (formulas + sentences === 0) return "Nothing names it yet.";
  return `It is named in ${count(formulas, "formula")} and ${count(sentences, "sentence")}; all of them will say the new name.`;
}

/** Gives the words of what is in the way; undefined once it is done. */
async function rename(
  file: string,
  { from, to }: { readonly from: string; readonly to: string },
  context: Context,
): Promise<string | undefined> {
  const { documents } = context.book;
  if (to === from) return "Write another name than the one it has.";
  // Reading formulas for their names takes a parser, which is only fetched here.
  const { renameCell } = await import("../../compile/rename.ts");
  const done = renameCell(documents, { file, from, to });
  if (!done.ok) return done.why;
  const shipped = [...done.texts.keys()].find((one) => !context.editing.mayEdit(one));
  if (shipped !== undefined)
    return `It is named in ${shipped} too, which comes with the workbook. Make that notebook yours first.`;
  context.editing.edit(done.texts, { renamed: done.renamed });
  await plansFollowRename(context, done.renamed);
  openCell(idOf(file, to));
  context.say(`${from} is called ${to} now, wherever it is named.`);
  return undefined;
}
