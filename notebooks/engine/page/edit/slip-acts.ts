import { withBlockDuplicated, withBlockMoved, withBlockRemoved } from "../../document/seldom.ts";
import type { CellId, Notebook } from "../../types/index.ts";
import { partsOf } from "../book.ts";
import type { Context } from "../context.ts";
import { button, el } from "../dom.ts";
import { idAt, placeBeside, placeOf } from "./block-place.ts";
import { openCell } from "./open-cell.ts";
import { renameForm } from "./rename-form.ts";
import { focusTools } from "./tools-focus.ts";

/** What can be done with a cell as a whole, in words. */
export function slipActs(id: CellId, context: Context): HTMLElement {
  const [, name] = partsOf(id);
  const place = () => placeOf(id, context.book.documents);
  const change = (notebook: Notebook, text: string) =>
    context.editing.edit(new Map([[notebook.file, text]]));
  const move = (by: -1 | 1) => {
    const at = place();
    if (!at) return;
    const to = placeBeside(at.notebook, at.index, by);
    if (to === undefined) {
      context.say(by < 0 ? "It stands at the top already." : "It stands at the end already.");
      return;
    }
    change(at.notebook, withBlockMoved(at.notebook, at.index, to));
    context.say(`${name} is moved ${by < 0 ? "up" : "down"}.`);
  };
  const rename = renameForm(id, context);
  const renameButton = button("Rename", () => rename.toggle(), {
    class: "lnk",
    "aria-expanded": "false",
  });
  rename.shown = (isShown) => renameButton.setAttribute("aria-expanded", String(isShown));
  return el(
    "div",
    { class: "slipacts" },
    el(
      "p",
      {},
      renameButton,
      button("Duplicate", () => duplicate(id, context), { class: "lnk" }),
      button("Move up", () => move(-1), { class: "lnk" }),
      button("Move down", () => move(1), { class: "lnk" }),
      button("Take out", () => takeOut(id, context), { class: "lnk" }),
    ),
    rename.element,
  );
}

function duplicate(id: CellId, context: Context): void {
  const place = placeOf(id, context.book.documents);
  if (!place) return;
  const { notebook, index } = place;
  const text = withBlockDuplicated(notebook, index);
  context.editing.edit(new Map([[notebook.file, text]]));
  const copy = copyBeside(notebook, index, context);
  if (copy) openCell(copy);
  context.say(copy ? `${partsOf(copy)[1]} is a copy of it.` : "It is there twice now.");
}

/** The cell that was not there before, among the two now where one was. */
function copyBeside(before: Notebook, index: number, { book }: Context): CellId | undefined {
  const now = book.documents.get(before.file);
  if (!now) return undefined;
  const old = new Set(before.blocks.map((_, at) => idAt(before, at)));
  for (const at of [index + 1, index, index + 2]) {
    const id = idAt(now, at);
    if (id !== undefined && !old.has(id)) return id;
  }
  return undefined;
}

function takeOut(id: CellId, context: Context): void {
  const place = placeOf(id, context.book.documents);
  if (!place) return;
  const { notebook, index } = place;
  const gives = context.book.outline.get(id)?.gives.length ?? 0;
  context.editing.edit(new Map([[notebook.file, withBlockRemoved(notebook, index)]]));
  focusTools(index - 1);
  const named =
    gives === 0
      ? ""
      : ` ${gives === 1 ? "One cell names" : `${gives} cells name`} it and can’t be worked out now.`;
  context.say(`${partsOf(id)[1]} is taken out.${named} Undo brings it back.`);
}
