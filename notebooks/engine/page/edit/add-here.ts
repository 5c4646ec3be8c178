import { freeName, withBlockAdded } from "../../document/seldom.ts";
import type { Context } from "../context.ts";
import { button, el } from "../dom.ts";
import { idAt } from "./block-place.ts";
import { openCell } from "./open-cell.ts";
import { firstTable, type StartingPoint, startingPoints } from "./starting-points.ts";

/** "Add here", with what can be added after a block; `index` gives the block's place now. */
export function addHere(
  context: Context,
  index: () => number,
  wordsAdded: (index: number) => void,
): HTMLElement {
  const list = el("ul", { class: "starting", hidden: true });
  let isOpen = false;
  const show = (isShown: boolean) => {
    isOpen = isShown;
    list.hidden = !isShown;
    figure.setAttribute("aria-expanded", String(isShown));
  };
  const put = (point: StartingPoint) => {
    show(false);
    addCell(point, index() + 1, context);
  };
  const toggle = () => {
    if (list.childElementCount === 0) fill();
    show(!isOpen);
    if (isOpen) list.querySelector("button")?.focus();
  };
  const figure = button("a figure or entry", toggle, { class: "lnk", "aria-expanded": "false" });
  const fill = () =>
    list.append(
      ...startingPoints(context.today).map((point) =>
        el(
          "li",
          {},
          button(point.words, () => put(point), { class: "lnk" }),
        ),
      ),
    );
  const words = button("words", () => addWords(index() + 1, context, wordsAdded), { class: "lnk" });
  const table = button(firstTable.words, () => put(firstTable), { class: "lnk" });
  const element = el(
    "div",
    { class: "addhere" },
    el("p", {}, "Add here: ", figure, " · ", words, " · ", table),
    list,
  );
  element.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape" || !isOpen) return;
    show(false);
    figure.focus();
  });
  return element;
}

function addCell({ kind, name, content }: StartingPoint, at: number, context: Context): void {
  const { main } = context.book;
  const free = freeName(main.blocks, name);
  const text = withBlockAdded(main, at, kind, { name: free, content });
  context.editing.edit(new Map([[main.file, text]]));
  const now = context.book.main;
  const found = now.blocks.findIndex((block) => block.kind === kind && block.name === free);
  const id = idAt(now, found);
  if (id) openCell(id);
  context.say(`${free} is added.`);
}

const firstWords = "Write here.";

function addWords(at: number, context: Context, added: (index: number) => void): void {
  const { main } = context.book;
  const before = main.blocks.length;
  const text = withBlockAdded(main, at, "prose", { content: firstWords });
  context.editing.edit(new Map([[main.file, text]]));
  const { blocks } = context.book.main;
  // Next to other words they are one with them.
  const found = blocks.findIndex(
    (block, index) => index >= at - 1 && block.kind === "prose" && block.text.includes(firstWords),
  );
  added(found < 0 ? Math.min(at, before - 1) : found);
}
