import type { Block, CellId, UsesBlock } from "../types/index.ts";
import { idOf } from "./book.ts";
import { CellSlot } from "./cell-slot.ts";
import type { CellView, Context } from "./context.ts";
import { dayInWords } from "./days.ts";
import { el } from "./dom.ts";
import { keepFocus } from "./keep-focus.ts";
import { prose, type References, referencesOf, safeLink } from "./prose.ts";
import { SentenceView } from "./sentence.ts";
import { type Stretch, Stretches } from "./stretches.ts";
import { type UsesView, usesView } from "./uses-view.ts";

/** Prose as it is drawn, with what stands in its sentences. */
interface DrawnProse {
  readonly nodes: readonly HTMLElement[];
  readonly figures: readonly (readonly [CellId, SentenceView])[];
}

/** The page of one notebook: its prose, entries, tables and results in the document's order. */
export class NotebookView {
  readonly element = el("main", { id: "page", class: "page", tabindex: -1 });
  headings: readonly HTMLElement[] = [];
  private readonly context: Context;
  private readonly stretches = new Stretches(this.element);
  private views = new Map<CellId, Set<CellView>>();
  private slots = new Map<CellId, CellSlot>();
  private proses = new Map<string, DrawnProse>();
  private uses = new Map<string, UsesView>();
  private readonly side = el(
    "p",
    { class: "side" },
    "What stands in a tray, open at the top, is yours to change. The rest is worked out.",
  );

  constructor(context: Context) {
    this.context = context;
    this.lay();
  }

  /** Lays the page out as the document is now; what is the same stays as it is. */
  lay(): void {
    const before = { proses: this.proses, uses: this.uses, slots: this.slots };
    this.proses = new Map();
    this.uses = new Map();
    this.slots = new Map();
    this.views = new Map();
    const laying = new Laying();
    const { blocks } = this.context.book.main;
    const references = referencesOf(blocks.map(({ text }) => text).join(""));
    blocks.forEach((block, index) => {
      this.put(block, { laying, references, before });
      const tools = this.context.editing.blockTools?.(index, block);
      if (tools) laying.here().push(tools);
    });
    this.finish(laying);
    keepFocus(() => this.stretches.put(laying.stretches));
    for (const [id, slot] of this.slots) if (before.slots.get(id) !== slot) this.show(slot, id);
    for (const drawn of this.proses.values())
      for (const [id, view] of drawn.figures) this.show(view, id);
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

  private put(block: Block, { laying, references, before }: Put): void {
    if (block.kind === "prose") {
      const drawn = this.drawnProse(block.text, references, before.proses);
      for (const [id, view] of drawn.figures) this.add(id, view);
      for (const node of drawn.nodes) laying.prose(node);
    } else if (block.kind === "uses") laying.body().push(this.usesOf(block, before.uses).element);
    else {
      const id = laying.idOf(this.context.book.main.file, block.name);
      laying.body().push(this.slotOf(id, before.slots).element);
    }
  }

  private slotOf(id: CellId, before: ReadonlyMap<CellId, CellSlot>): CellSlot {
    const slot = before.get(id) ?? new CellSlot(id, this.context);
    slot.reblock();
    this.slots.set(id, slot);
    this.add(id, slot);
    return slot;
  }

  private usesOf(block: UsesBlock, before: ReadonlyMap<string, UsesView>): UsesView {
    const { book } = this.context;
    const titles = block.names.map(({ name }) => {
      const id = book.find(name, block.file);
      return id && `${id} ${book.title(id)}`;
    });
    const key = fresh(this.uses, `${block.text} ${titles.join()}`);
    const opened = (id: CellId, slot: CellSlot) => {
      this.slots.set(id, slot);
      this.add(id, slot);
      this.show(slot, id);
    };
    const view = before.get(key) ?? usesView(block, this.context, opened);
    this.uses.set(key, view);
    for (const [id, slot] of view.slots) {
      this.slots.set(id, slot);
      this.add(id, slot);
    }
    return view;
  }

  private drawnProse(
    text: string,
    references: References,
    before: ReadonlyMap<string, DrawnProse>,
  ): DrawnProse {
    const { book, driver } = this.context;
    const named = [...text.matchAll(/`\s*fig\s+(\S+)\s*`/g)].map(([, name = ""]) => name);
    const means = named.map((name) => book.find(name, book.main.file) ?? name).join();
    const key = fresh(this.proses, JSON.stringify([text, means, driver.units, references]));
    const drawn = before.get(key) ?? this.drawProse(text, references);
    this.proses.set(key, drawn);
    return drawn;
  }

  private drawProse(text: string, references: References): DrawnProse {
    const figures: [CellId, SentenceView][] = [];
    const nodes = prose(text, {
      references,
      figure: (name) => this.figure(name, figures),
      link: safeLink,
    });
    return { nodes: nodes.map(framed), figures };
  }

  private figure(name: string, figures: [CellId, SentenceView][]): Node {
    const { book, driver } = this.context;
    if (name === "today") return el("span", {}, dayInWords(this.context.today));
    if (name === "units")
      return el("span", {}, driver.units === "us" ? "feet and inches" : "metric");
    const id = book.find(name, book.main.file);
    if (id === undefined) return el("span", { class: "refused" }, `${name} is not known here`);
    const view = new SentenceView(id, this.context);
    figures.push([id, view]);
    return view.element;
  }

  private finish(laying: Laying): void {
    const { head } = laying;
    if (!head.nodes.some(({ tagName }) => tagName === "H1"))
      head.nodes.unshift(el("h1", {}, this.context.book.main.title));
    head.nodes.push(this.side);
    this.headings = laying.stretches.flatMap(({ heading }) => heading ?? []);
  }
}

interface Put {
  readonly laying: Laying;
  readonly references: References;
  readonly before: {
    readonly proses: ReadonlyMap<string, DrawnProse>;
    readonly uses: ReadonlyMap<string, UsesView>;
    readonly slots: ReadonlyMap<CellId, CellSlot>;
  };
}

/** Deals the nodes of a document out to the stretches of the page. */
class Laying {
  readonly head: Stretch = { heading: undefined, nodes: [] };
  readonly stretches: Stretch[] = [this.head];
  private readonly ids = new Set<string>();
  private readonly counts = new Map<string, number>();

  here(): HTMLElement[] {
    return (this.stretches.at(-1) ?? this.head).nodes;
  }

  /** The stretch that cells go to: the head keeps only title and lede. */
  body(): HTMLElement[] {
    if (this.stretches.length === 1) this.stretches.push({ heading: undefined, nodes: [] });
    return this.here();
  }

  prose(node: HTMLElement): void {
    this.giveOwnId(node);
    const isTitle = node.tagName === "H1" && !this.stretches.some(({ nodes }) => nodes.some(isH1));
    if (isTitle) {
      this.head.nodes.push(node);
      return;
    }
    if (node.tagName === "H1" || node.tagName === "H2")
      this.stretches.push({ heading: node, nodes: [] });
    if (node.tagName === "P") node.classList.toggle("lede", this.stretches.length === 1);
    this.here().push(node);
  }

  /** A name given twice stands for two cells: both say so. */
  idOf(file: string, name: string): CellId {
    const count = (this.counts.get(name) ?? 0) + 1;
    this.counts.set(name, count);
    const id = idOf(file, name);
    return count === 1 ? id : `${id}/${count}`;
  }

  private giveOwnId(node: HTMLElement): void {
    if (!/^H[1-6]$/.test(node.tagName)) return;
    // Headings that are drawn already keep the name they were given, where it is free.
    node.dataset.wanted ??= node.id;
    const wanted = ["", "page"].includes(node.dataset.wanted) ? "part" : node.dataset.wanted;
    let id = wanted;
    for (let count = 2; this.ids.has(id); count += 1) id = `${wanted}-${count}`;
    this.ids.add(id);
    node.id = id;
    // Reached by the list of contents, a heading takes focus, so that reading goes on from there.
    node.tabIndex = -1;
  }
}

const isH1 = ({ tagName }: HTMLElement) => tagName === "H1";

/** A table of the prose scrolls by itself. */
function framed(node: HTMLElement): HTMLElement {
  if (node.tagName !== "TABLE") return node;
  node.className = "led";
  const region = { class: "wide scroll", role: "group", "aria-label": "A table", tabindex: 0 };
  return el("div", region, node);
}

/** The key, told apart from an equal one that came before. */
function fresh(taken: ReadonlyMap<string, unknown>, key: string): string {
  let own = key;
  for (let count = 2; taken.has(own); count += 1) own = `${key} ${count}`;
  return own;
}
