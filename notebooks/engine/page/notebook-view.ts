import type { Block, CellId } from "../types/index.ts";
import { idOf } from "./book.ts";
import { CellSlot } from "./cell-slot.ts";
import type { CellView, Context } from "./context.ts";
import { dayInWords } from "./days.ts";
import { el } from "./dom.ts";
import { prose, type References, referencesOf, safeLink } from "./prose.ts";
import { SentenceView } from "./sentence.ts";
import { usesView } from "./uses-view.ts";

/** The page of one notebook: its prose, entries, tables and results in the document's order. */
export class NotebookView {
  readonly element = el("main", { id: "page", class: "page", tabindex: -1 });
  readonly headings: HTMLElement[] = [];
  private readonly context: Context;
  private readonly views = new Map<CellId, Set<CellView>>();
  private readonly slots = new Map<CellId, CellSlot>();
  private readonly ids = new Set<string>();
  private readonly counts = new Map<string, number>();
  private at: HTMLElement;

  constructor(context: Context) {
    this.context = context;
    const { main } = context.book;
    this.at = el("div", { class: "ruled head" });
    this.element.append(this.at);
    const references = referencesOf(main.blocks.map(({ text }) => text).join(""));
    for (const block of main.blocks) this.put(block, references);
    if (!this.element.querySelector("h1")) this.at.prepend(el("h1", {}, main.title));
    this.addSide();
  }

  /** Shows these cells as they are now, wherever they stand on the page. */
  update(ids: Iterable<CellId>): void {
    for (const id of ids) for (const view of this.views.get(id) ?? []) this.show(view, id);
  }

  updateBusy(): void {
    for (const slot of this.slots.values()) slot.showBusy();
  }

  slot(id: CellId): CellSlot | undefined {
    return this.slots.get(id);
  }

  /** Every cell that stands somewhere on the page. */
  get cells(): Iterable<CellId> {
    return this.views.keys();
  }

  private show(view: CellView, id: CellId): void {
    const { book } = this.context;
    view.update(book.states.get(id), book.outline.get(id));
  }

  private add(id: CellId, view: CellView): void {
    const views = this.views.get(id) ?? new Set();
    views.add(view);
    this.views.set(id, views);
  }

  private put(block: Block, references: References): void {
    if (block.kind === "prose") this.putProse(block.text, references);
    else if (block.kind === "uses") {
      const { element } = usesView(block, this.context, (id, slot) => this.addSlot(id, slot));
      this.body().append(element);
    } else {
      const id = this.idOfBlock(block.name);
      const slot = new CellSlot(id, this.context);
      slot.element.classList.toggle("quiet", block.hints.quiet);
      this.body().append(slot.element);
      this.addSlot(id, slot);
    }
  }

  /** A name given twice stands for two cells: both say so. */
  private idOfBlock(name: string): CellId {
    const count = (this.counts.get(name) ?? 0) + 1;
    this.counts.set(name, count);
    const id = idOf(this.context.book.main.file, name);
    return count === 1 ? id : `${id}/${count}`;
  }

  private addSlot(id: CellId, slot: CellSlot): void {
    this.slots.set(id, slot);
    this.add(id, slot);
    this.show(slot, id);
  }

  private putProse(text: string, references: References): void {
    const nodes = prose(text, {
      references,
      figure: (name) => this.figure(name),
      link: safeLink,
    });
    for (const node of nodes) this.putNode(node);
  }

  private putNode(node: HTMLElement): void {
    this.giveOwnId(node);
    if (node.tagName === "H1" && !this.element.querySelector("h1")) {
      this.at.append(node);
      return;
    }
    if (node.tagName === "H1" || node.tagName === "H2") {
      this.at = el("section", { class: "ruled", "aria-labelledby": node.id });
      this.element.append(this.at);
      this.headings.push(node);
    }
    if (node.tagName === "TABLE") {
      node.className = "led";
      const region = { class: "wide scroll", role: "group", "aria-label": "A table", tabindex: 0 };
      this.at.append(el("div", region, node));
      return;
    }
    const { previousElementSibling: last } = node;
    node.classList.toggle(
      "lede",
      node.tagName === "P" && this.at.classList.contains("head") && !last,
    );
    this.at.append(node);
  }

  /** The stretch that cells go to: the head keeps only title and lede. */
  private body(): HTMLElement {
    if (this.at.classList.contains("head")) {
      this.at = el("div", { class: "ruled" });
      this.element.append(this.at);
    }
    return this.at;
  }

  private giveOwnId(node: HTMLElement): void {
    if (!/^H[1-6]$/.test(node.tagName)) return;
    const wanted = node.id === "" || node.id === "page" ? "part" : node.id;
    let id = wanted;
    for (let count = 2; this.ids.has(id); count += 1) id = `${wanted}-${count}`;
    this.ids.add(id);
    node.id = id;
    // Reached by the list of contents, a heading takes focus, so that reading goes on from there.
    node.tabIndex = -1;
  }

  private figure(name: string): Node {
    const { book, driver } = this.context;
    if (name === "today") return el("span", {}, dayInWords(this.context.today));
    if (name === "units")
      return el("span", {}, driver.units === "us" ? "feet and inches" : "metric");
    const id = book.find(name, book.main.file);
    if (id === undefined) return el("span", { class: "refused" }, `${name} is not known here`);
    const view = new SentenceView(id, this.context);
    this.add(id, view);
    return view.element;
  }

  private addSide(): void {
    const words =
      "What stands in a tray, open at the top, is yours to change. The rest is worked out.";
    this.element.querySelector(".head")?.append(el("p", { class: "side" }, words));
  }
}
