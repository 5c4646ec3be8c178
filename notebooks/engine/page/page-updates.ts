import type { CellId } from "../types/index.ts";
import type { Announcer } from "./announce.ts";
import type { Book } from "./book.ts";
import type { Change } from "./changes.ts";
import { type Contents, contents } from "./contents.ts";
import { el } from "./dom.ts";
import type { Driver } from "./driver.ts";
import { moveWords } from "./move-words.ts";
import type { NotebookView } from "./notebook-view.ts";
import type { GatheredProblems } from "./problem-places.ts";
import type { Tally } from "./tally.ts";
import { troublesView } from "./troubles.ts";

/** What of an open notebook's page is shown anew as values come. */
export interface UpdatedParts {
  readonly book: Book;
  readonly driver: Driver;
  readonly view: NotebookView;
  readonly tally: Tally;
  readonly problems: GatheredProblems;
  readonly announcer: Announcer;
}

/** Shows on the page what the driver of an open notebook tells. */
export class PageUpdates {
  readonly troubles = el("div");
  contents: Contents;
  private readonly parts: UpdatedParts;
  private readonly tenths = new Map<CellId, number>();

  constructor(parts: UpdatedParts) {
    this.parts = parts;
    this.contents = contents(parts.view.headings);
  }

  /** Shows what undoing or doing again has changed. */
  stepped(words: string, change: Change | undefined): void {
    if (!change) return;
    const ids = [...change.entered.keys()];
    this.parts.view.update(ids);
    this.parts.tally.update();
    const files = [...change.texts.keys()].map(
      (file) => this.parts.book.documents.get(file)?.title ?? file,
    );
    this.parts.announcer.say(
      `${words}: ${[...ids.map((id) => this.parts.book.title(id)), ...files].join(", ")}`,
    );
  }

  /** Documents were edited: what is the same on the page stays as it is. */
  edited(): void {
    const before = this.parts.view.headings;
    this.parts.view.lay();
    const { headings } = this.parts.view;
    if (headings.length !== before.length || headings.some((one, at) => one !== before[at])) {
      const { element, end } = this.contents;
      end();
      this.contents = contents(headings);
      element.replaceWith(this.contents.element);
    }
    this.parts.tally.update();
  }

  /** Cells are there no more: nor is what they said of tables and entries. */
  gone(ids: ReadonlySet<CellId>): void {
    this.parts.view.update(this.parts.problems.forget(ids));
  }

  changed(ids: ReadonlySet<CellId>): void {
    const touched = new Set(ids);
    for (const id of ids) {
      const state = this.parts.book.states.get(id);
      if (state) for (const other of this.parts.problems.take(state)) touched.add(other);
    }
    this.parts.view.update(touched);
    this.parts.tally.update();
  }

  settled(): void {
    this.parts.view.updateBusy();
    this.parts.tally.update();
    if (this.parts.book.working.size === 0) this.tenths.clear();
    this.showTroubles([]);
    const words = moveWords(this.parts.book, this.parts.driver.moves);
    if (words !== undefined) this.parts.announcer.say(words, 1_200);
  }

  /** Long work is shown as it goes; it is said at its start and at each whole tenth. */
  goesOn(cell: CellId, words: string, fraction: number | undefined): void {
    this.parts.view.slot(cell)?.goesOn(words, fraction);
    const tenth = Math.floor((fraction ?? 0) * 10);
    if (this.tenths.get(cell) === tenth) return;
    this.tenths.set(cell, tenth);
    this.parts.announcer.say(`${this.parts.book.title(cell)}: ${words}`, 1_000);
  }

  countCautions(): number {
    const found = [...this.parts.book.states.values()].flatMap(({ id, cautions, shown }) =>
      this.parts.view.slot(id) ? (shown?.kind === "cautions" ? shown.cautions : cautions) : [],
    );
    return new Set(found.map(({ id }) => id)).size;
  }

  /** What could not be kept is kept now. */
  safeAgain(): void {
    this.said = [];
    this.showTroubles([]);
    this.parts.announcer.say("All that you typed is kept now.");
  }

  private said: readonly string[] = [];

  /** What could not be kept, and what is wrong with the documents, over the page. */
  showTroubles(more: readonly string[]): void {
    this.said = [...new Set([...this.said, ...more])];
    this.troubles.replaceChildren(
      ...troublesView(this.said, this.parts.driver?.documentProblems ?? []),
    );
  }
}
