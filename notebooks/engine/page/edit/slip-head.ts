import { withHints } from "../../document/seldom.ts";
import type { CellBlock, Hints, Notebook, TableBlock } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { el, freshId, setAttributes } from "../dom.ts";

type Flag = "pinned" | "quiet" | "folded";

const flags: readonly (readonly [Flag, string])[] = [
  ["pinned", "Stays in sight among the answers"],
  ["quiet", "Left out when reading, a step between"],
  ["folded", "Folded under its title"],
];

/** The head of a slip: the cell's name, its place, and how it is shown, which can be changed. */
export class SlipHead {
  readonly element: HTMLElement;
  readonly #hints = el("span", { class: "hints" });
  readonly #title: HTMLInputElement;
  readonly #boxes = new Map<Flag, HTMLInputElement>();

  /** `place` gives the block as it is now. */
  constructor(
    name: string,
    context: Context,
    place: () => { readonly notebook: Notebook; readonly index: number } | undefined,
  ) {
    const titleId = freshId("title");
    this.#title = el("input", { id: titleId, type: "text", maxlength: 120, autocomplete: "off" });
    const change = (hints: Partial<Hints>, goesOn: string) => {
      const at = place();
      if (!at) return;
      const text = withHints(at.notebook, at.index, hints);
      context.editing.edit(new Map([[at.notebook.file, text]]), { goesOn });
    };
    const refusedId = freshId("refused");
    const refused = el("p", { class: "refused", id: refusedId, role: "status", hidden: true });
    this.#title.addEventListener("input", () => {
      const title = this.#title.value.trim();
      const why = wrongTitle(title);
      refused.textContent = why ?? "";
      refused.hidden = why === undefined;
      setAttributes(this.#title, {
        "aria-invalid": why !== undefined && "true",
        "aria-describedby": why !== undefined && refusedId,
      });
      if (why === undefined) change({ title }, `title:${name}`);
    });
    const labels = flags.map(([flag, words]) => {
      const box = el("input", { type: "checkbox" });
      box.addEventListener("change", () => change({ [flag]: box.checked }, `${flag}:${name}`));
      this.#boxes.set(flag, box);
      return el("label", { class: "hintbox" }, box, ` ${words}`);
    });
    this.element = el(
      "div",
      { class: "sliphead" },
      el("span", { class: "cname" }, name),
      el(
        "details",
        { class: "as-shown" },
        el("summary", {}, this.#hints),
        el("label", { for: titleId }, "Its title"),
        el("span", { class: "tray" }, this.#title),
        refused,
        ...labels,
      ),
    );
  }

  show({ hints, line, text }: CellBlock | TableBlock): void {
    const last = line + text.trimEnd().split("\n").length - 1;
    const words = flags.filter(([flag]) => hints[flag]).map(([flag]) => flag);
    const said = [...words, `lines ${line} to ${last}`].join(" · ");
    if (this.#hints.textContent !== said) this.#hints.textContent = said;
    for (const [flag, box] of this.#boxes) box.checked = hints[flag];
    // What is being typed is left alone: a space at its end belongs to the word that comes.
    if (this.#title.value.trim() !== hints.title && !this.#title.matches(":focus"))
      this.#title.value = hints.title;
  }
}

/** What stands in the way of a title; undefined where it can be written down. */
function wrongTitle(title: string): string | undefined {
  if (title === "") return "Without a title the one before stands: write one.";
  // It stands in double quotes in the document.
  return title.includes('"')
    ? "A title can’t hold double quotes: the one before stands. Write ″ for inches."
    : undefined;
}
