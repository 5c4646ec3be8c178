import { Keeper, keepUnits, loadAllEntered, loadUnits } from "../store/index.ts";
import type { CellId, Units } from "../types/index.ts";
import { Announcer } from "./announce.ts";
import { type Book, openBook } from "./book.ts";
import { contents } from "./contents.ts";
import type { Context } from "./context.ts";
import { el } from "./dom.ts";
import { Driver } from "./driver.ts";
import { find, goTo } from "./go-to.ts";
import { moveWords } from "./move-words.ts";
import { NotebookView } from "./notebook-view.ts";
import type { PageOptions } from "./options.ts";
import { readyForPaper } from "./paper.ts";
import { GatheredProblems } from "./problem-places.ts";
import { RoomLink } from "./room-link.ts";
import { RoomNotice } from "./room-notice.ts";
import { Tally } from "./tally.ts";
import { top } from "./top.ts";
import { troublesView } from "./troubles.ts";

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
  const troubles: string[] = [];
  const keeper = new Keeper(
    storage,
    (words) => {
      if (open) open.showTroubles([words]);
      else troubles.push(words);
    },
    { journal: options.journal, now: () => new Date().toISOString() },
  );
  await keeper.takeUp();
  const [book, units = "us"] = await Promise.all([
    openBook({
      main: file,
      load: options.loadNotebook,
      readCsv: options.csv.readCsv,
      async loadEntered(files) {
        const loaded = await loadAllEntered(storage, files);
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
  open = new OpenNotebook(book, link, { units, troubles, keeper, page: options });
  if (brokeEarly !== undefined) open.driver.broke(brokeEarly);
  return true;
}

/** What was there before the notebook could be drawn. */
interface Opened {
  readonly units: Units;
  readonly troubles: readonly string[];
  readonly keeper: Keeper;
  readonly page: PageOptions;
}

/** An open notebook: ties its parts together. */
class OpenNotebook {
  private readonly book: Book;
  private readonly options: PageOptions;
  private readonly announcer = new Announcer();
  private readonly problems: GatheredProblems;
  readonly driver: Driver;
  private readonly view: NotebookView;
  private readonly tally: Tally;
  private readonly notice: RoomNotice;
  private readonly link: RoomLink;
  private readonly troubles = el("div");
  private readonly tenths = new Map<CellId, number>();

  constructor(book: Book, link: RoomLink, { units, troubles, keeper, page: options }: Opened) {
    this.book = book;
    this.link = link;
    this.options = options;
    this.problems = new GatheredProblems(book);
    addEventListener("pagehide", () => void keeper.flush());
    addEventListener("visibilitychange", () => void keeper.flush());
    this.driver = this.makeDriver(units, keeper);
    const context = this.makeContext();
    this.view = new NotebookView(context);
    this.tally = new Tally(context, {
      undo: () => this.undo(),
      putBackAll: () => this.putBackAll(),
      cautions: () => this.countCautions(),
      toCautions: () => find(".caution", this.view.element),
    });
    this.notice = new RoomNotice({
      stop: () => void this.driver.stop(),
      startAgain: () => this.openRoom(),
      title: (id) => book.title(id),
    });
    this.draw(units);
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
      enter: (id, value) => this.enter(new Map([[id, value]])),
      say: (words) => this.announcer.say(words),
      goTo: (id) => goTo(id, this.view.element),
    };
  }

  private makeDriver(units: Units, keeper: Keeper): Driver {
    const { book, options } = this;
    return new Driver({
      book,
      units,
      today: options.today,
      extras: Object.keys(options.code.extras).filter((name) => book.names(name)),
      keep: (id, value) => keeper.keep(id, value),
      events: {
        outlined: () => this.view.update(this.view.cells),
        changed: (ids) => this.changed(ids),
        settled: () => this.settled(),
        progress: (cell, words, fraction) => this.goesOn(cell, words, fraction),
        silent: (cell, silent) => (silent ? this.notice.silent(cell) : this.notice.hide()),
        ended: (end) => this.notice.ended(end),
      },
    });
  }

  private draw(units: Units): void {
    const { root } = this.options;
    const { title } = this.book.main;
    document.title = `${title} · Bedwright`;
    const nav = contents(this.view.headings);
    const frame = el("div", { class: "frame" }, nav, this.view.element, this.tally.element);
    root.dataset.view = "read";
    root.replaceChildren(
      el("a", { class: "skip", href: "#page" }, "Skip to the page"),
      top({
        title,
        units,
        setUnits: (chosen) => {
          this.driver.setUnits(chosen);
          void keepUnits(this.options.storage, chosen);
        },
        setView: (view) => {
          root.dataset.view = view;
        },
      }),
      this.notice.element,
      this.troubles,
      frame,
      this.announcer.element,
    );
    this.tally.update();
    readyForPaper(title);
  }

  private enter(values: Parameters<Driver["enter"]>[0]): void {
    this.driver.enter(values);
    this.view.update(values.keys());
    this.tally.update();
  }

  private undo(): void {
    const ids = this.driver.undo();
    this.view.update(ids);
    this.tally.update();
    const names = ids.map((id) => this.book.title(id)).join(", ");
    this.announcer.say(`Undone: ${names}`);
  }

  private putBackAll(): void {
    const ids = [...this.book.entered.keys()];
    this.enter(new Map(ids.map((id) => [id, undefined])));
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

  private said: readonly string[] = [];

  /** What could not be kept, and what is wrong with the documents, over the page. */
  showTroubles(more: readonly string[]): void {
    this.said = [...new Set([...this.said, ...more])];
    this.troubles.replaceChildren(...troublesView(this.said, this.driver?.documentProblems ?? []));
  }
}
