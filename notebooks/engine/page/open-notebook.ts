import { writeNotebook } from "../document/index.ts";
import { Keeper, keepUnits, loadUnits, noOtherTabs, StateKeeper } from "../store/index.ts";
import type { CellId, Units } from "../types/index.ts";
import { notebookActs } from "./acts.ts";
import { Announcer } from "./announce.ts";
import { type Book, openBook } from "./book.ts";
import type { Change } from "./changes.ts";
import { type Contents, contents } from "./contents.ts";
import type { Context } from "./context.ts";
import { el } from "./dom.ts";
import { Driver } from "./driver.ts";
import { find, goTo } from "./go-to.ts";
import { type Following, followOtherTabs, type KeptParts } from "./keep/index.ts";
import { Library } from "./library.ts";
import { makeItMine } from "./make-it-mine.ts";
import { moveWords } from "./move-words.ts";
import { NotebookView } from "./notebook-view.ts";
import type { PageOptions } from "./options.ts";
import { nameSheets, readyForPaper } from "./paper.ts";
import { GatheredProblems } from "./problem-places.ts";
import { RoomLink } from "./room-link.ts";
import { RoomNotice } from "./room-notice.ts";
import { RoomView } from "./room-view/room-view.ts";
import { Tally } from "./tally.ts";
import { type Head, top, type ViewName } from "./top.ts";
import { troublesView } from "./troubles.ts";

/** The ISO instant now. */
const now = () => new Date().toISOString();

/** Opens a notebook in the page; gives false where there is no such file. */
export async function openNotebook(file: string, options: PageOptions): Promise<boolean> {
  const { storage } = options;
  let open: OpenNotebook | undefined;
  let brokeEarly: string | undefined;
  const link = new RoomLink({
    engineUrl: options.engineUrl,
    code: options.code,
    received: (message) => open?.driver.received(message),
    broke(why) {
      if (open) open.driver.broke(why);
      else brokeEarly = why;
    },
    died: () => open?.driver.died(),
  });
  link.prepare();
  const troubles: string[] = options.storageTrouble ? [options.storageTrouble] : [];
  const trouble = (words: string) => {
    if (open) open.showTroubles([words]);
    else troubles.push(words);
  };
  const library = await Library.of(file, options);
  const keeper = new Keeper(storage, trouble, {
    journal: options.journal,
    scope: library.scope,
    others: options.others,
    now,
    later: (act) => void setTimeout(act, 5_000),
    safe: () => open?.safeAgain(),
    stands: (record) => open?.following.stands(record),
  });
  await keeper.takeUp();
  const [book, units = "us"] = await Promise.all([
    openBook({
      main: file,
      async load(name) {
        const text = await library.load(name);
        // What a page that ended could not write, as on a full disk, is newer than what is there.
        return keeper.textOnItsWay(library.place(name)) ?? text;
      },
      readCsv: options.csv.readCsv,
      async loadEntered(files) {
        const loaded = await keeper.load(files);
        troubles.push(...loaded.troubles);
        return loaded.entered;
      },
    }),
    loadUnits(storage),
  ]);
  if (!book) {
    link.remove();
    return false;
  }
  const states = new StateKeeper(storage, trouble);
  open = new OpenNotebook(book, link, { units, troubles, keeper, states, library, page: options });
  if (brokeEarly !== undefined) open.driver.broke(brokeEarly);
  return true;
}

/** What was there before the notebook could be drawn. */
interface Opened {
  readonly units: Units;
  readonly troubles: readonly string[];
  readonly keeper: Keeper;
  readonly states: StateKeeper;
  readonly library: Library;
  readonly page: PageOptions;
}

/** An open notebook: ties its parts together. */
class OpenNotebook {
  private readonly book: Book;
  private readonly options: PageOptions;
  private readonly library: Library;
  private readonly announcer = new Announcer();
  private readonly problems: GatheredProblems;
  readonly driver: Driver;
  private readonly context: Context;
  private readonly view: NotebookView;
  private readonly tally: Tally;
  private readonly notice: RoomNotice;
  private readonly head: Head;
  private readonly wall: RoomView;
  private readonly link: RoomLink;
  private readonly troubles = el("div");
  private readonly tenths = new Map<CellId, number>();
  readonly following: Following;
  private contents: Contents;

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
    this.contents = contents(this.view.headings);
    this.tally = new Tally(this.context, {
      putBackAll: () => this.putBackAll(),
      cautions: () => this.countCautions(),
      toCautions: () => find(".caution", this.view.element),
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
    this.showTroubles(troubles);
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
      enter: (id, value) => this.enter(new Map([[id, value]])),
      enterAll: (values) => this.enter(values),
      undo: () => this.stepped("Undone", driver.undo()),
      redo: () => this.stepped("Done again", driver.redo()),
      makeItMine: () => makeItMine(this.context),
      saveAsFile: () => undefined,
      say: (words) => this.announcer.say(words),
      goTo: (id) => goTo(id, this.view.element),
    };
  }

  private makeDriver(units: Units, keeper: Keeper, states: StateKeeper): Driver {
    const { book, options, library } = this;
    return new Driver({
      book,
      units,
      today: options.today,
      extras: Object.keys(options.code.extras).filter((name) => book.names(name)),
      keep: (id, value) => keeper.keep(id, value),
      keepText(file, text, title) {
        const { revision = 0 } = library.own.get(file) ?? {};
        keeper.keepText(library.place(file), text, { revision, title, changed: now() });
      },
      begins: (why) => void states.note(() => stateOf(book, library), { at: now(), why }),
      loadMore: (documents) => library.loadMore(documents),
      events: {
        outlined: () => {
          this.view.update(this.view.cells);
          this.tally.update();
        },
        edited: () => this.edited(),
        changed: (ids) => this.changed(ids),
        settled: () => this.settled(),
        progress: (cell, words, fraction) => this.goesOn(cell, words, fraction),
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
        void keepUnits(storage, chosen);
      },
      setView: (view) => this.setView(view),
      acts: notebookActs(this.context, this.library, kept),
    });
  }

  private draw(): void {
    const { root } = this.options;
    const { element: nav } = this.contents;
    root.replaceChildren(
      el("a", { class: "skip", href: "#page" }, "Skip to the page"),
      this.head.element,
      this.wall.element,
      this.notice.element,
      this.troubles,
      el("div", { class: "frame" }, nav, this.view.element, this.tally.element),
      this.announcer.element,
    );
    this.showTitle();
    this.setView(new URLSearchParams(location.search).has("write") ? "write" : "read");
    readyForPaper();
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
      const { startWriting } = await import("./edit/writing.ts");
      startWriting(context);
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
  }

  /** Shows what undoing or doing again has changed. */
  private stepped(words: string, change: Change | undefined): void {
    if (!change) return;
    const ids = [...change.entered.keys()];
    this.view.update(ids);
    this.tally.update();
    const files = [...change.texts.keys()].map(
      (file) => this.book.documents.get(file)?.title ?? file,
    );
    this.announcer.say(
      `${words}: ${[...ids.map((id) => this.book.title(id)), ...files].join(", ")}`,
    );
  }

  /** Documents were edited: what is the same on the page stays as it is. */
  private edited(): void {
    const before = this.view.headings;
    this.view.lay();
    this.wall.relay();
    const { headings } = this.view;
    if (headings.length !== before.length || headings.some((one, at) => one !== before[at])) {
      const { element, end } = this.contents;
      end();
      this.contents = contents(headings);
      element.replaceWith(this.contents.element);
    }
    this.showTitle();
    this.tally.update();
  }

  private putBackAll(): void {
    const ids = [...this.book.entered.keys()];
    this.enter(new Map(ids.map((id) => [id, undefined])), "putting back");
    this.announcer.say("Everything is as the notebook has it. Undo last change brings yours back.");
  }

  private changed(ids: ReadonlySet<CellId>): void {
    const touched = new Set(ids);
    for (const id of ids) {
      const state = this.book.states.get(id);
      if (state) for (const other of this.problems.take(state)) touched.add(other);
    }
    this.view.update(touched);
    this.tally.update();
  }

  private settled(): void {
    this.view.updateBusy();
    this.tally.update();
    if (this.book.working.size === 0) this.tenths.clear();
    this.showTroubles([]);
    const words = moveWords(this.book, this.driver.moves);
    if (words !== undefined) this.announcer.say(words, 1_200);
  }

  /** Long work is shown as it goes; it is said at its start and at each whole tenth. */
  private goesOn(cell: CellId, words: string, fraction: number | undefined): void {
    this.view.slot(cell)?.goesOn(words, fraction);
    const tenth = Math.floor((fraction ?? 0) * 10);
    if (this.tenths.get(cell) === tenth) return;
    this.tenths.set(cell, tenth);
    this.announcer.say(`${this.book.title(cell)}: ${words}`, 1_000);
  }

  private countCautions(): number {
    const found = [...this.book.states.values()].flatMap(({ id, cautions, shown }) =>
      this.view.slot(id) ? (shown?.kind === "cautions" ? shown.cautions : cautions) : [],
    );
    return new Set(found.map(({ id }) => id)).size;
  }

  /** What could not be kept is kept now. */
  safeAgain(): void {
    this.said = [];
    this.showTroubles([]);
    this.announcer.say("All that you typed is kept now.");
  }

  private said: readonly string[] = [];

  /** What could not be kept, and what is wrong with the documents, over the page. */
  showTroubles(more: readonly string[]): void {
    this.said = [...new Set([...this.said, ...more])];
    this.troubles.replaceChildren(...troublesView(this.said, this.driver?.documentProblems ?? []));
  }
}

/** What an earlier state holds: the texts of the reader's own documents, and all that is entered. */
function stateOf(book: Book, { own, scope }: Library) {
  const texts = [...own.keys()].flatMap((file) => {
    const notebook = book.documents.get(file);
    return notebook ? [[file, writeNotebook(notebook)] as const] : [];
  });
  return {
    ...scope,
    files: [...book.documents.keys()],
    texts: Object.fromEntries(texts),
    entered: Object.fromEntries(book.entered),
  };
}
