import type { StateReason } from "../store/index.ts";
import type { CellId, DocumentProblem, FromRoom, Notebook, ToRoom, Units } from "../types/index.ts";
import type { Book, EnteredValue } from "./book.ts";
import { asItIs, type Change, History } from "./changes.ts";
import { DocumentChanges, type LoadedMore } from "./document-changes.ts";
import { Moves } from "./moves.ts";
import { Restarts } from "./restarts.ts";
import type { RoomLink } from "./room-link.ts";
import { Turns } from "./turns.ts";
import { Watchdog } from "./watchdog.ts";

export interface DriverEvents {
  outlined(): void;
  /** These cells are there no more. */
  gone(cells: ReadonlySet<CellId>): void;
  /** Documents were edited: the page is to be laid out anew. */
  edited(): void;
  /** These cells have new values, or their "was" has changed. */
  changed(cells: ReadonlySet<CellId>): void;
  settled(): void;
  progress(cell: CellId, words: string, fraction: number | undefined): void;
  /** The room gives no sign, or does again; `cell` is what it was starting last. */
  silent(cell: CellId | undefined, silent: boolean): void;
  /** The room was ended; where it is not `over`, it was started again without the cell. */
  ended(end: RoomEnd): void;
}

/** Why a room was ended: by the reader, after 15 s without a sign, by the browser, or because it broke. */
export interface RoomEnd {
  readonly why: "stopped" | "no sign" | "died" | "broke";
  readonly cell: CellId | undefined;
  /** Nothing runs until the reader starts it again. */
  readonly over: boolean;
  readonly message?: string;
}

export interface DriverOptions {
  readonly book: Book;
  readonly today: string;
  /** Parts that the room is sent because a formula names them. */
  extras(): readonly string[];
  readonly events: DriverEvents;
  units: Units;
  keep(id: CellId, value: EnteredValue | undefined): void;
  keepText(file: string, text: string, title: string): void;
  /** A new change is about to be made. */
  begins(why: StateReason): void;
  /** The documents these need and that are not open yet, and what is entered in them. */
  loadMore(documents: ReadonlyMap<string, Notebook>): Promise<LoadedMore>;
}

export interface EditOptions {
  /** Why, for the earlier states. Default "editing". */
  readonly why?: StateReason;
  /** Where it is typed: what follows there within four seconds is part of the same change. */
  readonly goesOn?: string;
  /** Cells whose entered values go to another name. */
  readonly renamed?: ReadonlyMap<CellId, CellId>;
}

/** Drives the closed room for one open notebook: what is entered goes in, what changed comes out. */
export class Driver {
  readonly history = new History();
  readonly moves: Moves;
  /** Cells that never came to an end and were stopped. */
  readonly stopped = new Set<CellId>();
  units: Units;
  /** What is wrong with the documents and belongs to no cell. */
  documentProblems: readonly DocumentProblem[] = [];
  private readonly options: DriverOptions;
  private link: RoomLink | undefined;
  private session = 0;
  private starting: CellId | undefined;
  private readonly turns: Turns;
  private readonly watchdog: Watchdog;
  private readonly restarts = new Restarts();
  private readonly documents: DocumentChanges;
  /** The parts that the room was started with. */
  private sent: ReadonlySet<string> = new Set();
  /** The room was ended and waits for the reader. */
  private isOver = false;

  constructor(options: DriverOptions) {
    this.options = options;
    this.units = options.units;
    this.moves = new Moves(options.book.states);
    this.turns = new Turns((message) => this.link?.send(message));
    this.documents = new DocumentChanges({
      book: options.book,
      keepText: options.keepText,
      loadMore: options.loadMore,
      changed: (cells) => this.documentsChanged(cells),
    });
    this.watchdog = new Watchdog({
      ping: () => this.link?.send({ kind: "ping" }),
      silent: () => options.events.silent(this.starting, true),
      back: () => options.events.silent(undefined, false),
      gone: () => void this.restart("no sign"),
      now: () => performance.now(),
      every(milliseconds, tick) {
        const timer = setInterval(tick, milliseconds);
        return () => clearInterval(timer);
      },
    });
  }

  /** Opens the notebook in a new room. */
  async open(link: RoomLink): Promise<void> {
    this.link = link;
    this.isOver = false;
    this.session += 1;
    this.starting = undefined;
    this.turns.restart(this.session);
    const { book, today } = this.options;
    const extras = this.options.extras();
    this.sent = new Set(extras);
    const opening: ToRoom = {
      kind: "open",
      session: this.session,
      main: book.main.file,
      documents: Object.fromEntries(book.documents),
      entered: Object.fromEntries(book.entered),
      surroundings: { units: this.units, today },
      stopped: [...this.stopped],
    };
    await link.start(extras, [opening]);
    this.watchdog.start();
  }

  /** Enters new texts or rows; undefined puts a cell's default back. */
  enter(values: ReadonlyMap<CellId, EnteredValue | undefined>, why: StateReason = "typing"): void {
    const [only] = values.size === 1 ? values.keys() : [];
    this.change({ entered: values, texts: new Map() }, { place: only, why });
  }

  /** Gives documents new texts; the cells of what is the same go on as they are. */
  edit(
    texts: ReadonlyMap<string, string>,
    { goesOn, renamed = new Map(), why = "editing" }: EditOptions = {},
  ): void {
    const { entered } = this.options.book;
    const moved = new Map<CellId, EnteredValue | undefined>();
    for (const from of renamed.keys()) if (entered.has(from)) moved.set(from, undefined);
    for (const [from, to] of renamed) if (entered.has(from)) moved.set(to, entered.get(from));
    this.change({ entered: moved, texts }, { place: goesOn, why });
  }

  /** Undoes the last change; gives what it put back. */
  undo(): Change | undefined {
    const change = this.history.undo((of) => asItIs(this.options.book, of));
    if (change) this.put(change, true);
    return change;
  }

  /** Does again what was undone last. */
  redo(): Change | undefined {
    const change = this.history.redo((of) => asItIs(this.options.book, of));
    if (change) this.put(change, true);
    return change;
  }

  /** Takes over what another tab wrote: it is kept already, and no step to be undone here. */
  take({ entered, texts }: Change): void {
    const { book } = this.options;
    for (const [id, value] of entered) {
      if (value === undefined) book.entered.delete(id);
      else book.entered.set(id, value);
    }
    if (texts.size === 0) this.turns.enter(entered);
    else this.documents.take(texts);
  }

  /** Makes a change that can be undone. */
  change(change: Change, { place, why }: { place?: string | undefined; why: StateReason }): void {
    this.options.begins(why);
    this.put(
      change,
      this.history.note(asItIs(this.options.book, change), performance.now(), place),
    );
  }

  setUnits(units: Units): void {
    this.units = units;
    this.moves.clear();
    this.turns.units(units);
  }

  /** Ends the room though it is busy, marks the cell it was at, and starts again without it. */
  async stop(): Promise<void> {
    await this.restart("stopped");
  }

  /** The browser ended the room, as it does where memory runs out. */
  died(): void {
    void this.restart("died");
  }

  /** Starts the room again after it was ended for good. */
  async startAgain(link: RoomLink): Promise<void> {
    this.restarts.clear();
    await this.open(link);
  }

  /** Starts a stopped cell once more. */
  async tryAgain(id: CellId): Promise<void> {
    this.stopped.delete(id);
    this.restarts.clear();
    if (this.link) await this.open(this.link);
  }

  /** Ends all long work under way; what it had found by then stands. */
  stopLongWork(): void {
    this.link?.stopLongWork();
  }

  /** Starts the long work of a cell once more, after it was stopped. */
  workAgain(id: CellId): void {
    this.turns.again(id);
  }

  received(message: FromRoom): void {
    this.watchdog.sign();
    if ("session" in message && message.session !== this.session) return;
    const { book, events } = this.options;
    if (message.kind === "outline") {
      book.outline.clear();
      for (const cell of message.cells) book.outline.set(cell.id, cell);
      this.documentProblems = message.problems ?? [];
      events.gone(book.forgetOthers());
      events.outlined();
    } else if (message.kind === "starting") this.starting = message.cell;
    else if (message.kind === "values") {
      for (const state of message.cells) book.states.set(state.id, state);
      events.changed(new Set(message.cells.map(({ id }) => id)));
    } else if (message.kind === "progress")
      events.progress(message.cell, message.words, message.fraction);
    else if (message.kind === "settled") {
      book.working = new Set(message.working);
      this.starting = undefined;
      this.turns.settled(message.turn);
      events.settled();
    }
  }

  /** The room's script broke or it flooded the page. */
  broke(why: string): void {
    this.watchdog.stop();
    this.isOver = true;
    const { starting: cell } = this;
    this.options.events.ended({ why: "broke", cell, over: true, message: why });
  }

  private put({ entered, texts }: Change, begins: boolean): void {
    const { book, keep, events } = this.options;
    if (begins) {
      const moved = this.moves.moved();
      this.moves.begin();
      if (moved.length > 0) events.changed(new Set(moved));
    }
    for (const [id, value] of entered) {
      if (value === undefined) book.entered.delete(id);
      else book.entered.set(id, value);
      keep(id, value);
    }
    if (texts.size > 0) this.documents.put(texts);
    else this.turns.enter(entered);
  }

  /** The documents are others: what of them runs differently is worked out anew. */
  private documentsChanged(cells: ReadonlySet<CellId>): void {
    const { book, events } = this.options;
    // What is edited starts again, though it once ran without an end.
    for (const id of cells) this.stopped.delete(id);
    const lacks = this.options.extras().some((name) => !this.sent.has(name));
    if (this.isOver || lacks) void this.openAnew();
    else
      this.turns.edit(() => ({
        documents: Object.fromEntries(book.documents),
        entered: Object.fromEntries(book.entered),
      }));
    events.edited();
  }

  /**
   * A room that was given up is tried once more, since the notebook may have been mended; one that
   * lacks a part a formula has come to name is started with it.
   */
  private async openAnew(): Promise<void> {
    this.options.events.silent(undefined, false);
    if (this.link) await this.startAgain(this.link);
  }

  private async restart(why: "stopped" | "no sign" | "died"): Promise<void> {
    const cell = this.suspect();
    this.watchdog.stop();
    this.link?.end();
    if (cell !== undefined) this.stopped.add(cell);
    const over = !this.restarts.admits(cell !== undefined);
    this.isOver = over;
    this.options.events.ended({ why, cell, over });
    if (this.link && !over) await this.open(this.link);
  }

  /** The cell the room hangs at, where that is known: not one that has been stopped before. */
  private suspect(): CellId | undefined {
    const { working } = this.options.book;
    const [only] = working.size === 1 ? working : [];
    const cell = this.starting ?? only;
    return cell === undefined || this.stopped.has(cell) ? undefined : cell;
  }
}
