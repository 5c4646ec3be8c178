import {
  type Keeper,
  keepUnits,
  noOtherTabs,
  type StateKeeper,
  setOwnGarden,
} from "../store/index.ts";
import type { CellId, Units } from "../types/index.ts";
import { notebookActs } from "./acts.ts";
import { Announcer } from "./announce.ts";
import { type Book, type EnteredValue, wordsNamed } from "./book.ts";
import type { Change } from "./changes.ts";
import type { Context } from "./context.ts";
import { el } from "./dom.ts";
import { Driver } from "./driver.ts";
import { find, goTo } from "./go-to.ts";
import { type Following, followOtherTabs, type KeptParts } from "./keep/index.ts";
import type { Library } from "./library.ts";
import { NotebookView } from "./notebook-view.ts";
import { now } from "./now.ts";
import type { PageOptions } from "./options.ts";
import { originNote } from "./origin-note.ts";
import { PageUpdates } from "./page-updates.ts";
import { nameSheets, readyForPaper } from "./paper.ts";
import { GatheredProblems } from "./problem-places.ts";
import type { RoomLink } from "./room-link.ts";
import { RoomNotice } from "./room-notice.ts";
import { RoomView } from "./room-view/room-view.ts";
import { stateOf } from "./state-of.ts";
import { Tally } from "./tally.ts";
import { type Head, top, type ViewName } from "./top.ts";
import { Watchers } from "./watchers.ts";

/** What was there before the notebook could be drawn. */
export interface Opened {
  readonly units: Units;
  readonly troubles: readonly string[];
  readonly keeper: Keeper;
  readonly states: StateKeeper;
  readonly library: Library;
  readonly page: PageOptions;
}

/** An open notebook: ties its parts together. */
export class NotebookPage {
  private readonly book: Book;
  private readonly options: PageOptions;
  private readonly library: Library;
  private readonly announcer = new Announcer();
  private readonly watchers = new Watchers();
  private readonly problems: GatheredProblems;
  readonly driver: Driver;
  private readonly context: Context;
  private readonly view: NotebookView;
  private readonly tally: Tally;
  private readonly notice: RoomNotice;
  private readonly head: Head;
  private readonly wall: RoomView;
  private readonly link: RoomLink;
  private readonly updates: PageUpdates;
  readonly following: Following;

  constructor(book: Book, link: RoomLink, opened: Opened) {
    const { units, troubles, keeper, states, library, page } = opened;
    this.book = book;
    this.link = link;
    this.options = page;
    this.library = library;
    this.problems = new GatheredProblems(book);
    addEventListener("pagehide", () => void keeper.flush());
    addEventListener("visibilitychange", () => void keeper.flush());
    this.driver = this.makeDriver(units, keeper, states);
    this.context = this.makeContext();
    this.view = new NotebookView(this.context);
    this.tally = new Tally(this.context, {
      putBackAll: () => this.putBackAll(),
      cautions: () => this.updates.countCautions(),
      toCautions: () => find(".caution", this.view.element),
    });
    this.updates = new PageUpdates({
      book,
      driver: this.driver,
      view: this.view,
      tally: this.tally,
      problems: this.problems,
      announcer: this.announcer,
    });
    this.notice = new RoomNotice({
      stop: () => void this.driver.stop(),
      startAgain: () => this.openRoom(),
      title: (id) => book.title(id),
    });
    this.following = followOtherTabs({
      others: page.others ?? noOtherTabs,
      scope: library.scope,
      keeper,
      book,
      take: (change) => {
        this.driver.take(change);
        this.stepped("Changed in another tab", change);
      },
    });
    this.head = this.makeHead(units, {
      contentNow: () => stateOf(book, library),
      flush: () => Promise.all([keeper.flush(), states.flush()]).then(() => undefined),
      change: (change, why) => {
        this.driver.change(change, { why });
        this.stepped("Brought back", change);
      },
    });
    this.wall = new RoomView({
      root: page.root,
      page: this.view.element,
      title: () => book.main.title,
      leave: () => this.setView("read"),
      say: (words) => this.announcer.say(words),
    });
    this.draw();
    this.updates.showTroubles(troubles);
    this.openRoom();
  }

  private openRoom(): void {
    this.notice.hide();
    this.driver.startAgain(this.link).catch((error: unknown) => {
      this.driver.broke(error instanceof Error ? error.message : String(error));
    });
  }

  private makeContext(): Context {
    const { book, driver, problems, options } = this;
    return {
      book,
      driver,
      problems,
      sources: options.sources,
      csv: options.csv,
      today: options.today,
      options,
      editing: {
        mayEdit: (file) => this.library.own.has(file),
        edit: (texts, how) => driver.edit(texts, how),
      },
      watch: (changed) => this.watchers.add(changed),
      enter: (id, value) => this.enter(new Map([[id, value]])),
      enterAll: (values) => this.enter(values),
      undo: () => this.stepped("Undone", driver.undo()),
      redo: () => this.stepped("Done again", driver.redo()),
      makeItMine: () =>
        this.seldom(async () => (await import("./make-it-mine.ts")).makeItMine(this.context)),
      saveAsFile: () =>
        this.seldom(async () => (await import("./save-file.ts")).saveAsFile(this.context)),
      say: (words) => this.announcer.say(words),
      goTo: (id) => goTo(id, this.view.element),
    };
  }

  /** Does what its code is only fetched for when somebody asks. */
  private seldom(act: () => Promise<void>): void {
    act().catch(() =>
      this.announcer.say(
        "The part of the page for this could not be fetched. Try again when you are online.",
      ),
    );
  }

  private makeDriver(units: Units, keeper: Keeper, states: StateKeeper): Driver {
    const { book, options, library } = this;
    return new Driver({
      book,
      units,
      today: options.today,
      extras: () => wordsNamed(Object.keys(options.code.extras), book.documents),
      keep: (id, value) => keeper.keep(id, value),
      keepText(file, text, title) {
        const { revision = 0 } = library.own.get(file) ?? {};
        keeper.keepText(library.place(file), text, { revision, title, changed: now() });
      },
      begins: (why) => void states.note(() => stateOf(book, library), { at: now(), why }),
      async loadMore(documents) {
        const more = await library.loadMore(documents);
        keeper.saw(new Map(Object.entries(more.entered) as [CellId, EnteredValue][]));
        return more;
      },
      events: {
        gone: (ids) => this.updates.gone(ids),
        outlined: () => {
          this.view.update(this.view.cells);
          this.tally.update();
          this.watchers.tell();
        },
        edited: () => {
          this.updates.edited();
          this.wall.relay();
          this.showTitle();
          this.watchers.tell();
        },
        changed: (ids) => {
          this.updates.changed(ids);
          this.watchers.tell();
        },
        settled: () => {
          this.updates.settled();
          this.watchers.tell();
        },
        progress: (cell, words, fraction) => this.updates.goesOn(cell, words, fraction),
        silent: (cell, silent) => (silent ? this.notice.silent(cell) : this.notice.hide()),
        ended: (end) => this.notice.ended(end),
      },
    });
  }

  private makeHead(units: Units, kept: KeptParts): Head {
    const { storage } = this.options;
    return top({
      title: this.book.main.title,
      units,
      setUnits: (chosen) => {
        this.driver.setUnits(chosen);
        this.watchers.tell();
        void keepUnits(storage, chosen);
      },
      setView: (view) => this.setView(view),
      acts: notebookActs(this.context, this.library, kept),
    });
  }

  private draw(): void {
    const { root } = this.options;
    const nav = this.updates.contents.element;
    const note = this.originNote();
    root.replaceChildren(
      el("a", { class: "skip", href: "#page" }, "Skip to the page"),
      this.head.element,
      this.wall.element,
      this.notice.element,
      this.updates.troubles,
      ...(note ? [note] : []),
      el("div", { class: "frame" }, nav, this.view.element, this.tally.element),
      this.announcer.element,
    );
    this.showTitle();
    this.setView(new URLSearchParams(location.search).has("write") ? "write" : "read");
    readyForPaper();
  }

  private originNote(): HTMLElement | undefined {
    const { own, scope } = this.library;
    const { file } = this.book.main;
    const record = own.get(file);
    return (
      record &&
      originNote(record, {
        apart: scope.apart,
        useOwnGarden: (ownGarden) => void this.useOwnGarden(file, ownGarden),
      })
    );
  }

  private async useOwnGarden(file: string, ownGarden: boolean): Promise<void> {
    const set = await setOwnGarden(this.options.storage, file, ownGarden);
    if (set.good) location.reload();
    else this.updates.showTroubles([set.words]);
  }

  /** Reading, writing, or one thing at a time on a wall. */
  private setView(view: ViewName): void {
    this.options.root.dataset.view = view;
    this.head.choose(view);
    this.wall.show(view === "room");
    if (view === "write") void this.startWriting();
  }

  /** What stands between blocks in the writing view is fetched when that is first chosen. */
  private async startWriting(): Promise<void> {
    const { context, view } = this;
    if (context.editing.blockTools) return;
    try {
      const [{ startWriting }, { markDepends }] = await Promise.all([
        import("./edit/writing.ts"),
        import("./depends/marking.ts"),
      ]);
      startWriting(context);
      markDepends(context, view.element, context.options.root);
      view.lay();
    } catch {
      context.say("The editor could not be fetched. Choose “Write” again when you are online.");
    }
  }

  private showTitle(): void {
    const { title } = this.book.main;
    document.title = `${title} · Bedwright`;
    this.head.show(title);
    nameSheets(title);
  }

  private enter(...[values, why]: Parameters<Driver["enter"]>): void {
    this.driver.enter(values, why);
    this.view.update(values.keys());
    this.tally.update();
    this.watchers.tell();
  }

  private stepped(words: string, change: Change | undefined): void {
    this.updates.stepped(words, change);
    this.watchers.tell();
  }

  private putBackAll(): void {
    const ids = [...this.book.entered.keys()];
    this.enter(new Map(ids.map((id) => [id, undefined])), "putting back");
    this.announcer.say("Everything is as the notebook has it. Undo last change brings yours back.");
  }

  /** Says what the reader must know, over the page. */
  showTroubles(words: readonly string[]): void {
    this.updates.showTroubles(words);
  }

  /** What could not be kept is kept now. */
  safeAgain(): void {
    this.updates.safeAgain();
  }
}
