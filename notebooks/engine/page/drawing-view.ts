import type { ShownDrawing } from "../types/index.ts";
import { buildTree } from "./build-tree.ts";
import { el, freshId } from "./dom.ts";
import { onPaper, sheetWidth } from "./on-paper.ts";
import { cutForSheets } from "./sheets.ts";

/**
 * A drawing in the form for the width it has. It is drawn anew when its width passes into another
 * form's, never shrunk; for paper the form of the sheet is taken.
 */
export class DrawingView {
  readonly element = el("figure", { class: "pic wide" });
  private readonly prefix = `${freshId("d")}-`;
  private readonly holder = el("div", { class: "drawn" });
  private readonly heading = el("p", { class: "cap" });
  private readonly caption = el("figcaption");
  private drawing: ShownDrawing | undefined;
  private form = -1;
  private paperWidth: number | undefined;

  constructor() {
    this.element.append(this.heading, this.holder, this.caption);
    onPaper(this.element, {
      begin: () => this.chooseFor(sheetWidth),
      end: () => this.chooseFor(undefined),
    });
    new ResizeObserver(() => this.choose()).observe(this.holder);
  }

  show(drawing: ShownDrawing): void {
    this.drawing = drawing;
    this.form = -1;
    this.heading.textContent = drawing.title;
    this.heading.hidden = drawing.title === "";
    this.caption.textContent = drawing.caption ?? "";
    this.caption.hidden = drawing.caption === undefined;
    this.choose();
  }

  private chooseFor(paperWidth: number | undefined): void {
    this.paperWidth = paperWidth;
    this.choose();
    const [first] = this.holder.children;
    // Where a sheet stands in the page's place nothing of the page has a size, and none of it is printed.
    const isThere = first instanceof SVGSVGElement && first.checkVisibility();
    if (paperWidth !== undefined && isThere) this.holder.replaceChildren(...cutForSheets(first));
    // Cut into sheets, it is no form for the screen any more.
    else if (this.holder.childElementCount > 1) {
      this.form = -1;
      this.choose();
    }
  }

  private choose(): void {
    const { drawing } = this;
    const width = this.paperWidth ?? this.holder.clientWidth;
    if (!drawing || width === 0) return;
    const best = formFor(drawing, width);
    if (best === this.form) return;
    this.form = best;
    const form = drawing.forms[best];
    if (!form) return;
    const node = buildTree(form.tree, this.prefix);
    if (node instanceof Element) describe(node, drawing);
    this.holder.replaceChildren(node);
  }
}

/** The widest form that fits; the narrowest where none does. */
export function formFor({ forms }: ShownDrawing, width: number): number {
  let best = -1;
  forms.forEach(({ from }, index) => {
    const now = forms[best]?.from ?? Number.NEGATIVE_INFINITY;
    if (from <= width && from >= now) best = index;
  });
  if (best >= 0) return best;
  const narrowest = Math.min(...forms.map(({ from }) => from));
  return forms.findIndex(({ from }) => from === narrowest);
}

/** A drawing is one picture to whoever cannot see it, with its words. */
function describe(node: Element, { title, alternative }: ShownDrawing): void {
  node.setAttribute("role", "img");
  node.setAttribute("aria-label", alternative === "" ? title : alternative);
  node.setAttribute("focusable", "false");
}
