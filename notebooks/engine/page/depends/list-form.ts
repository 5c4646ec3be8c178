import type { CellId } from "../../types/index.ts";
import { button, el } from "../dom.ts";
import type { Graph } from "./graph.ts";
import { layersOf, withoutCircles } from "./layers.ts";
import { countsInWords, nearOf } from "./words.ts";

export interface ListParts {
  readonly graph: Graph;
  title(id: CellId): string;
  fileTitle(file: string): string;
  isEntry(id: CellId): boolean;
  readonly main: string;
  go(id: CellId): void;
}

/** The picture's narrow form: the layers one under another, each cell with what it takes and gives to. */
export function layersList(parts: ListParts): HTMLElement {
  const { graph } = parts;
  const boxes = graph.cells.map(({ id }) => ({ id, width: 0, height: 0 }));
  const layers = layersOf(boxes, withoutCircles(boxes, graph.edges).forward);
  const count = Math.max(-1, ...layers.values()) + 1;
  const lists = Array.from({ length: count }, (_, layer) => {
    const cells = graph.cells.filter(({ id }) => layers.get(id) === layer);
    return el(
      "li",
      {},
      el("h3", {}, layer === 0 ? "To begin with" : `Step ${layer + 1}`),
      el("ul", {}, ...cells.map(({ id }) => lineOf(id, parts))),
    );
  });
  return el("ol", { class: "dependlist" }, ...lists);
}

function lineOf(id: CellId, parts: ListParts): HTMLElement {
  const { graph, title, go } = parts;
  const near = nearOf(id, graph.edges);
  const cell = graph.cells.find((one) => one.id === id);
  const summary = el(
    "summary",
    {},
    el("b", { class: cell?.hints.pinned ? "pinned" : undefined }, title(id)),
    el(
      "small",
      {},
      [kindOf(id, parts), countsInWords(near).toLowerCase()].filter(Boolean).join(", "),
    ),
  );
  const details = el("details", { "data-id": id }, summary);
  // Most are never opened.
  details.addEventListener("toggle", () => {
    if (details.childElementCount > 1) return;
    details.append(
      named("Takes", near.takes, title),
      named("Gives to", near.gives, title),
      button("Go to it", () => go(id)),
    );
  });
  return el("li", {}, details);
}

function kindOf(id: CellId, { graph, isEntry, main, fileTitle }: ListParts): string {
  const cell = graph.cells.find((one) => one.id === id);
  const kind = cell?.what === "table" ? "table" : isEntry(id) ? "entry" : "";
  const from = cell && cell.file !== main ? `from ${fileTitle(cell.file)}` : "";
  return [kind, from].filter(Boolean).join(" ");
}

function named(term: string, ids: readonly CellId[], title: (id: CellId) => string): HTMLElement {
  const words = ids.length === 0 ? "nothing" : ids.map(title).join("; ");
  return el("p", {}, el("span", { class: "u" }, `${term}: `), words);
}

/** The same in words: every cell with what it takes and gives to, by file. */
export function dependsTable(parts: ListParts): HTMLElement {
  const { graph, title, main, fileTitle, go } = parts;
  const files = [...new Set([main, ...graph.cells.map(({ file }) => file)])];
  const bodies = files.map((file) => {
    const own = graph.cells.filter((cell) => cell.file === file);
    const head = el(
      "tr",
      {},
      el("th", { scope: "rowgroup", colspan: 3, class: "l filehead" }, fileTitle(file)),
    );
    const rows = own.map(({ id }) => {
      const { takes, gives } = nearOf(id, graph.edges);
      return el(
        "tr",
        {},
        el(
          "th",
          { scope: "row", class: "l" },
          button(title(id), () => go(id), { class: "lnk" }),
        ),
        el("td", { class: "l" }, takes.map(title).join("; ")),
        el("td", { class: "l" }, gives.map(title).join("; ")),
      );
    });
    return el("tbody", {}, ...(files.length > 1 ? [head] : []), ...rows);
  });
  const heads = ["Cell", "Takes", "Gives to"].map((text) =>
    el("th", { scope: "col", class: "l" }, text),
  );
  return el("table", { class: "led" }, el("thead", {}, el("tr", {}, ...heads)), ...bodies);
}
