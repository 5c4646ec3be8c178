import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { button, el } from "../dom.ts";
import { openPane } from "../pane.ts";
import { type Graph, graphOf } from "./graph.ts";
import { dependsTable, type ListParts, layersList } from "./list-form.ts";
import { Picture } from "./picture.ts";
import { countsInWords, nearOf } from "./words.ts";

/** Shows what depends on what in a sheet over the notebook: all of it, or around one cell. */
export function openDepends(context: Context, only?: CellId): void {
  const view = new DependsView(context, only, () => pane.close());
  const pane = openPane({
    title: only === undefined ? "What depends on what" : `What feeds ${context.book.title(only)}`,
    className: "depends",
    content: [view.element],
    closed: () => view.end(),
  });
  view.draw();
}

/** Narrower than this the layers stand under each other. */
const narrow = "(max-width: 639px)";

class DependsView {
  readonly element = el("div", { class: "dependbody" });
  readonly #context: Context;
  readonly #close: () => void;
  #only: CellId | undefined;
  #steps = false;
  #looked: CellId | undefined;
  readonly #words = el("p", { class: "looked", role: "status" });
  readonly #place = el("div");
  readonly #narrow = matchMedia(narrow);
  readonly #redraw = () => this.draw();
  #picture: Picture | undefined;

  constructor(context: Context, only: CellId | undefined, close: () => void) {
    this.#context = context;
    this.#only = only;
    this.#close = close;
    this.element.append(this.#controls(), this.#words, this.#place);
    this.#narrow.addEventListener("change", this.#redraw);
  }

  end(): void {
    this.#narrow.removeEventListener("change", this.#redraw);
  }

  draw(): void {
    const { book } = this.#context;
    const options = this.#only === undefined ? {} : { only: this.#only };
    const graph = graphOf(book.outline, { steps: this.#steps, ...options });
    const parts = this.#parts(graph);
    const table = el(
      "details",
      { class: "fold" },
      el("summary", {}, el("b", {}, "The same as a table")),
      el(
        "div",
        {
          class: "scroll",
          role: "group",
          "aria-label": "Cells, what they take and give to",
          tabindex: 0,
        },
        dependsTable(parts),
      ),
    );
    if (graph.cells.length === 0) {
      this.#place.replaceChildren(el("p", {}, "This notebook has no cells yet."));
      return;
    }
    this.#picture = undefined;
    if (this.#narrow.matches) this.#place.replaceChildren(layersList(parts), table);
    else {
      const pinned = book.pinned().find((id) => graph.cells.some((cell) => cell.id === id));
      this.#picture = new Picture({
        ...parts,
        first: this.#only ?? pinned,
        looked: (id) => this.#look(id, graph),
      });
      const help =
        "Lines go from what is taken to what takes it. Arrow keys go along them; Enter, or a double click, goes to the cell on the page.";
      this.#place.replaceChildren(this.#picture.element, el("p", { class: "hint" }, help), table);
      if (this.#only !== undefined) this.#picture.focus(this.#only);
    }
    this.#look(this.#only, graph);
  }

  #parts(graph: Graph): ListParts {
    const { book } = this.#context;
    return {
      graph,
      main: book.main.file,
      title: (id) => book.title(id),
      fileTitle: (file) => book.documents.get(file)?.title ?? file,
      isEntry: (id) => book.states.get(id)?.entry !== undefined,
      go: (id) => {
        this.#close();
        this.#context.goTo(id);
      },
    };
  }

  #look(id: CellId | undefined, graph: Graph): void {
    this.#looked = id;
    this.#picture?.mark(id);
    const words =
      id === undefined
        ? `${graph.cells.length} cells`
        : `${this.#context.book.title(id)}: ${countsInWords(nearOf(id, graph.edges)).toLowerCase()}`;
    // Words that pass by as the pointer does are not said one after another.
    setTimeout(() => {
      if (this.#looked === id && this.#words.textContent !== words) this.#words.textContent = words;
    }, 80);
  }

  #controls(): HTMLElement {
    const steps = el("input", { type: "checkbox" });
    steps.addEventListener("change", () => {
      this.#steps = steps.checked;
      this.draw();
    });
    const whole = button("Show the whole notebook", () => {
      this.#only = undefined;
      whole.remove();
      const heading = this.element.closest("dialog")?.querySelector("h2");
      if (heading) heading.textContent = "What depends on what";
      heading?.focus();
      this.draw();
    });
    return el(
      "p",
      { class: "controls" },
      el("label", { class: "check" }, steps, "Steps between too"),
      ...(this.#only === undefined ? [] : [whole]),
    );
  }
}
