import { button, el } from "../dom.ts";
import { type Leaf, leavesOf, type Part } from "./leaves.ts";

export interface RoomViewOptions {
  /** What holds the view's name: the page's root. */
  readonly root: HTMLElement;
  readonly page: HTMLElement;
  title(): string;
  /** Back to the view before. */
  leave(): void;
  say(words: string): void;
}

/** The smallest letters of the page, in px, and the share of the wall's width they must have. */
const smallest = 13.5;
const share = 0.02;

/**
 * The notebook on a wall: one thing at a time, large; the arrow keys go on, Escape leaves. Nothing
 * is copied: what stands there is the page's own, so entries stay live.
 */
export class RoomView {
  readonly element: HTMLElement;
  private readonly options: RoomViewOptions;
  private readonly place = el("h1", { class: "place" });
  private leaves: readonly Leaf[] = [];
  private at = 0;
  private shown = false;

  constructor(options: RoomViewOptions) {
    this.options = options;
    this.element = el(
      "header",
      { class: "wall", hidden: true, tabindex: -1 },
      button("Back", () => this.go(-1)),
      this.place,
      button("Next", () => this.go(1)),
      button("Leave the room", () => options.leave()),
    );
    addEventListener("keydown", (event) => this.key(event));
    addEventListener("resize", () => this.fit());
  }

  /** Enters or leaves; entering begins at what stands at the top of the window. */
  show(shown: boolean): void {
    if (shown === this.shown) return;
    const top = this.firstInSight();
    this.shown = shown;
    this.element.hidden = !shown;
    this.fit();
    if (!shown) {
      const [first] = this.leaves[this.at]?.nodes ?? [];
      this.mark(undefined);
      first?.scrollIntoView({ block: "start" });
      return;
    }
    // The keys are for the wall: what had focus is put away with the page's head.
    this.element.focus({ preventScroll: true });
    this.relay();
    this.at = Math.max(
      0,
      this.leaves.findIndex(({ nodes }) => top !== undefined && nodes.includes(top)),
    );
    this.turn();
  }

  /** The page was laid anew. */
  relay(): void {
    if (!this.shown) return;
    const [first] = this.leaves[this.at]?.nodes ?? [];
    const nodes = [...this.options.page.querySelectorAll<HTMLElement>(":scope > .ruled > *")];
    this.leaves = leavesOf(nodes, partOf);
    const same = this.leaves.findIndex((leaf) => first !== undefined && leaf.nodes.includes(first));
    this.at = same >= 0 ? same : Math.min(this.at, this.leaves.length - 1);
    this.turn();
  }

  private go(by: number): void {
    const to = Math.min(Math.max(this.at + by, 0), this.leaves.length - 1);
    if (to === this.at) return;
    this.at = to;
    this.turn();
    const { heading } = this.leaves[to] ?? { heading: "" };
    this.options.say(`${heading}, ${to + 1} of ${this.leaves.length}`);
  }

  private turn(): void {
    const leaf = this.leaves[this.at];
    this.mark(leaf);
    // What is folded on the page is what there is to see here.
    for (const node of leaf?.nodes ?? [])
      for (const fold of node.querySelectorAll<HTMLDetailsElement>(":scope > details.fold"))
        fold.open = true;
    const where = leaf?.heading
      ? `${this.options.title()} / ${leaf.heading}`
      : this.options.title();
    this.place.replaceChildren(
      el("b", {}, where),
      el("span", {}, `${this.at + 1} of ${this.leaves.length}`),
    );
    scrollTo(0, 0);
  }

  private mark(leaf: Leaf | undefined): void {
    const now = new Set(leaf?.nodes);
    for (const node of this.options.page.querySelectorAll<HTMLElement>(":scope > .ruled > *"))
      node.classList.toggle("now", now.has(node));
    for (const stretch of this.options.page.querySelectorAll(":scope > .ruled")) {
      const shown = [...stretch.children].filter((node) => now.has(node as HTMLElement));
      stretch.classList.toggle("now", shown.length > 0);
    }
  }

  /** Everything is made so large that the smallest letters can be read from the last row. */
  private fit(): void {
    const zoom = this.shown ? Math.max(1, (innerWidth * share) / smallest) : 1;
    this.options.root.style.setProperty("--wall", String(zoom));
  }

  private firstInSight(): HTMLElement | undefined {
    const nodes = this.options.page.querySelectorAll<HTMLElement>(":scope > .ruled > *");
    return [...nodes].find(
      (node) => partOf(node) !== "heading" && node.getBoundingClientRect().bottom > 80,
    );
  }

  private key(event: KeyboardEvent): void {
    if (!this.shown || event.defaultPrevented || document.querySelector("dialog[open]")) return;
    if (event.key === "Escape") this.options.leave();
    if (
      event.target instanceof Element &&
      event.target.closest("input, select, textarea, summary, .scroll")
    )
      return;
    if (["ArrowRight", "ArrowDown", "PageDown"].includes(event.key)) this.go(1);
    else if (["ArrowLeft", "ArrowUp", "PageUp"].includes(event.key)) this.go(-1);
    else return;
    event.preventDefault();
  }
}

/** What a node of the page is on the wall. */
function partOf(node: HTMLElement): Part {
  if (/^H[1-6]$/.test(node.tagName)) return "heading";
  if (node.hidden || node.matches(".side, .quiet:not(.asked), .tools-after, .uses"))
    return "nothing";
  if (!node.matches(".cell"))
    return /^(P|UL|OL|BLOCKQUOTE)$/.test(node.tagName) ? "words" : "thing";
  if (node.dataset.kind === undefined) return "nothing";
  return isRow(node) ? "row" : "thing";
}

function isRow(node: HTMLElement): boolean {
  return node.dataset.kind === "entry" || node.dataset.kind === "result";
}
